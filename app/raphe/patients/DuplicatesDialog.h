// Records that may be of one person: pairs that look alike, each side by side with what differs. A person decides: joined, or two
// people. Joining cannot be undone and asks once more.
#pragma once

#include "app/raphe/practice/WorkDialog.h"
#include "core/record/PatientPairs.h"
#include "core/store/Practice.h"

#include <set>
#include <vector>

class QListWidget;
class QRadioButton;
class QStackedWidget;
class QTableWidget;

namespace raphe {

class DuplicatesDialog : public WorkDialog {
    Q_OBJECT

public:
    /// The practice must outlive the dialog. Looking for pairs begins at once, in the background.
    explicit DuplicatesDialog(Practice &practice, QWidget *parent = nullptr);

    /// How many records were joined to others.
    [[nodiscard]] int joined() const { return m_joined; }

    void reject() override;

protected:
private:
    struct Person {
        std::int64_t id = 0;
        QString name;
        QString born;
    };
    struct Pair {
        Person first;
        Person second;
    };
    struct Found {
        std::vector<Pair> pairs;
        bool isAll = true;
    };

    [[nodiscard]] static Result<Found> findPairs(const Practice &practice);
    [[nodiscard]] QWidget *makeList();
    [[nodiscard]] QWidget *makeSides();
    [[nodiscard]] QWidget *makeChoice();
    [[nodiscard]] QWidget *makeConfirmation();
    void showFound(Result<Found> found);
    void fillList(int row);
    void showPair();
    void noteOnce(std::int64_t patient);
    [[nodiscard]] Result<Done> compare(const Pair &pair);
    void askOnce();
    void takeBack();
    void join();
    void partPair();
    void replaceInPairs(std::int64_t gone, const Person &by);
    [[nodiscard]] const Pair *chosen() const;

    Practice &m_practice;
    std::vector<Pair> m_pairs;
    QString m_more; // said after their count when a limit was met
    std::set<std::int64_t> m_noted; // whose opening is recorded
    int m_joined = 0;
    QWidget *m_left = nullptr;
    QLabel *m_count = nullptr;
    QListWidget *m_list = nullptr;
    WrappedLabel *m_result = nullptr;
    QStackedWidget *m_pages = nullptr;
    WrappedLabel *m_empty = nullptr;
    QTableWidget *m_sides = nullptr;
    QStackedWidget *m_steps = nullptr; // choosing, or being asked once more
    QRadioButton *m_keepFirst = nullptr;
    QRadioButton *m_keepSecond = nullptr;
    QPushButton *m_ask = nullptr;
    WrappedLabel *m_question = nullptr;
    QPushButton *m_no = nullptr;
};

} // namespace raphe
