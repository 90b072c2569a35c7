// The screen comes back from the patient: asks for the passphrase of who is signed in. Wrong tries wait as when unlocking, and
// count together with those. accepted() when it was right.
#pragma once

#include "app/raphe/practice/TryDelay.h"
#include "app/raphe/practice/WorkDialog.h"

#include <cstdint>
#include <string>

class QPushButton;

namespace raphe {

class PassphraseLine;

class TakeOverDialog : public WorkDialog {
    Q_OBJECT

public:
    /// Whose passphrase of which practice file.
    struct Whose {
        std::string file;
        std::string signIn;
        std::int64_t account = 0;
    };
    TakeOverDialog(Whose whose, int failures, QWidget *parent);

    void done(int result) override;

Q_SIGNALS:
    /// To be kept across restarts, as UnlockDialog has it.
    void failuresChanged(int failures);

private:
    void tryIt();
    void setFailures(int failures);
    void waitAsLongAsNeeded();
    void showWait(qint64 secondsLeft);

    const Whose m_whose;
    int m_failures;
    PassphraseLine *m_passphrase;
    QPushButton *m_take;
    TryDelay m_delay;
};

} // namespace raphe
