// All answers once more, each with a button that leads back to it.
#pragma once

#include "app/raphe/intake/patient/PatientPage.h"

namespace raphe {

class CheckPage : public PatientPage {
    Q_OBJECT

public:
    struct Answer {
        QString question;
        QString words; // empty: no answer
        int stop = 0; // where it is asked
    };
    explicit CheckPage(const PatientWords &words);

    [[nodiscard]] bool asks() const override { return false; }
    void setScale(double scale) override;
    void list(const std::vector<Answer> &answers);

Q_SIGNALS:
    void changeWanted(int stop);

private:
    WrappedLabel *m_sample; // has the size that the list takes
    QWidget *m_list = nullptr;
    std::vector<Answer> m_answers;
};

} // namespace raphe
