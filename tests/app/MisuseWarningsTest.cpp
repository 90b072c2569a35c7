// Misuse of the warning signs and the consents: empty words, odd days, and every way around a lock.
#include "tests/app/Misuse.h"

#include "app/raphe/help/Help.h"
#include "app/raphe/intake/ConsentDialog.h"
#include "core/plan/NextVisit.h"
#include "tests/app/PdfPage.h"

#include <nlohmann/json.hpp>

#include <QComboBox>
#include <QListWidget>

namespace raphe::test {

TEST_F(Misuse, Mis02ALowScoreReleasesNoLeg)
{
    hurtsAt("sural-region-medial", Side::Left);
    const std::vector<Place> calf{{{"sural-region-medial"}, Side::Left}};
    const char *sentence = "Score 0, so no clot. Deep calf massage left today.";
    for (const char *id : {"leg-clot-calf-3-cm", "leg-clot-deep-vein-tender", "leg-clot-other-cause"})
        ASSERT_TRUE(answer(id, true, calf, Decision::Explained, sentence).ok());
    EXPECT_EQ(legClotPoints(adviser().rules().signs(), session().visit().warnings), 0)
        << "1 + 1 - 2, two-level Wells, N Engl J Med 2003;349:1227";
    for (const char *structure : {"soleus", "sural-region-medial", "rectus-femoris"}) {
        EXPECT_TRUE(cautions().isBarred({{structure}, Side::Left})) << structure;
        EXPECT_FALSE(cautions().isBarred({{structure}, Side::Right})) << structure;
    }
    EXPECT_FALSE(cautions().isBarred({{"trapezius"}, Side::Left}));
    const auto stop = cautions().stopOf({{"soleus"}, Side::Left}, "gliding");
    ASSERT_TRUE(stop);
    EXPECT_NE(stop->reason.find("whatever a score says"), std::string::npos) << stop->reason;
    EXPECT_NE(stop->reason.find("the same day"), std::string::npos) << stop->reason;
    for (const WarningAnswer &kept : stored().warnings)
        EXPECT_EQ(kept.why, sentence) << "as written";
    const Ran letter = run({QStringLiteral("letter"), QStringLiteral("--visit"), written(session().visit()),
        QStringLiteral("--out"), inFolder("letter.pdf")});
    EXPECT_EQ(letter.status, 0) << letter.err.toStdString();
}

TEST_F(Misuse, Mis05ConsentOfAMinorWithoutAGuardian)
{
    Visit minor = session().visit();
    minor.patient->born = dayFrom(minor.date, -15 * 366);
    ASSERT_TRUE(session().practice().saveVisit(session().visitId(), writeVisit(minor)).ok());
    ASSERT_TRUE(session().open(session().visitId()).ok());
    hurtsAt("posterior-cervical-region", Side::Left);
    ConsentDialog dialog(session(), &window());
    dialog.show();
    auto &list = *dialog.findChild<QListWidget *>();
    const auto title = QString::fromStdString(adviser().rules().consents().find("thrust-neck")->title);
    for (int row = 0; row < list.count(); ++row)
        if (list.item(row)->text().startsWith(title))
            list.setCurrentRow(row);
    auto *remark = named<QLineEdit>(dialog, QStringLiteral("Remark: what was asked, or agreed beside it"));
    remark->setText(QStringLiteral("risks explained, nothing done as the other way"));
    auto *name = named<QLineEdit>(dialog, QStringLiteral("Name of the parent or guardian"));
    const auto isGiven = [&] { return !session().visit().consents.empty(); };
    for (const char *none : {"", ".", " \u00a0 ", "-", "Test Patient", " test  PATIENT"}) {
        name->setText(QString::fromUtf8(none));
        QTest::mouseClick(button(dialog, QStringLiteral("Given")), Qt::LeftButton);
        EXPECT_FALSE(isGiven()) << "'" << none << "'";
        EXPECT_TRUE(says(dialog, QStringLiteral("parent or guardian who consents too"))) << "'" << none << "'";
        EXPECT_EQ(remark->text(), QStringLiteral("risks explained, nothing done as the other way")) << "the draft stays";
    }
    EXPECT_TRUE(says(dialog, QStringLiteral("from what age a patient consents alone, is for local law")));
    // A yes to something else is none to the thrust; nor can a file say so without a guardian.
    name->setText(QStringLiteral("Nora Feld"));
    QTest::mouseClick(button(dialog, QStringLiteral("Given")), Qt::LeftButton);
    ASSERT_EQ(session().visit().consents.size(), 1U);
    EXPECT_EQ(session().visit().consents.front().item, "thrust-neck");
    Visit other = session().visit();
    other.consents.front().item = "soft-tissue-by-hand";
    const auto due = consentsDue(adviser().rules().consents(), *knowledge().regions, other, {});
    EXPECT_TRUE(std::any_of(due.begin(), due.end(), [](const ConsentItem *i) { return i->id == "thrust-neck"; }));
    for (const char *self : {".", "Test Patient"}) {
        other.consents.front().guardian->name = self;
        EXPECT_FALSE(checkConsents(adviser().rules(), other, "visit").ok()) << self;
    }
    // Intake and examination go on.
    finds("trapezius", Side::Left);
    EXPECT_EQ(findings().size(), 1U);
}

TEST_F(Misuse, Mis07FillersAreNoDecision)
{
    hurtsAt("lumbar-region-medial", Side::Left);
    ask([&](WarningsDialog &dialog) {
        yes(dialog, "cauda-equina-saddle", [&](DecisionDialog &decision) {
            for (const char *filler : {".", " ", "\u00a0", "- -", "\u2026"}) {
                fill(decision, QString::fromUtf8(filler), QStringLiteral("ambulance"));
                EXPECT_TRUE(decision.isVisible()) << filler;
                EXPECT_TRUE(says(decision, QStringLiteral("Write down why"))) << filler;
                fill(decision, QStringLiteral("numb since Sunday"), QString::fromUtf8(filler));
                EXPECT_TRUE(decision.isVisible()) << filler;
                EXPECT_TRUE(says(decision, QStringLiteral("Write down who was told"))) << filler;
                EXPECT_TRUE(says(decision, QString::fromStdString(sign("cauda-equina-saddle").act))) << "what to do stays";
                ASSERT_TRUE(answered("cauda-equina-saddle")) << "the yes is kept";
                EXPECT_TRUE(session().isLocked());
                EXPECT_FALSE(answered("cauda-equina-saddle")->decided);
            }
            QTest::mouseClick(button(decision, QStringLiteral("Not decided yet")), Qt::LeftButton);
        });
        dialog.accept();
    });
    EXPECT_TRUE(bannerWords().startsWith(QStringLiteral("STOP")));
    EXPECT_FALSE(answer("cauda-equina-saddle", true, {}, Decision::EmergencyServices, "numb", ".").ok());
    expectNothingOffered("fillers");
}

TEST_F(Misuse, Mis16WhoWasToldInArabic)
{
    const QString told = QString::fromUtf8("الإسعاف 112, الساعة 10:42");
    ask([&](WarningsDialog &dialog) {
        yes(dialog, "chest-pain-now", [&](DecisionDialog &decision) { fill(decision, QString::fromUtf8("ألم في الصدر"), told); });
        dialog.accept();
    });
    ASSERT_TRUE(answered("chest-pain-now"));
    EXPECT_EQ(answered("chest-pain-now")->told, told.toStdString()) << "any script is an answer";
    EXPECT_EQ(answered("chest-pain-now")->decided, Decision::EmergencyServices);
    EXPECT_EQ(stored().warnings.front().told, told.toStdString());
    EXPECT_EQ(stored().warnings.front().asked, QDate::currentDate().toString(Qt::ISODate).toStdString());
    expectNothingOffered("told");
    const Ran letter = run({QStringLiteral("letter"), QStringLiteral("--visit"), written(session().visit()),
        QStringLiteral("--out"), inFolder("letter.pdf")});
    EXPECT_EQ(letter.status, 0) << letter.err.toStdString();
}

// The window dates every answer by the clock; another date can only come with a file.
TEST_F(Misuse, Mis20AnswersFromTheFuture)
{
    Visit visit = session().visit();
    visit.date = "2031-03-12";
    const WarningSigns &signs = adviser().rules().signs();
    for (const WarningSign *s : session().warningsToAsk())
        visit.warnings.push_back({s->id, false, "2099-01-01", {}, {}, {}, {}});
    const std::size_t asked = visit.warnings.size();
    ASSERT_GT(asked, 20U);
    ASSERT_TRUE(session().practice().saveVisit(session().visitId(), writeVisit(visit)).ok());
    ASSERT_TRUE(session().open(session().visitId()).ok());
    EXPECT_EQ(session().warningsToAsk().size(), asked) << "asked at once";
    EXPECT_EQ(stored().warnings, visit.warnings) << "the answers themselves are kept";
    EXPECT_EQ(dueSigns(signs, askedOf(signs, *knowledge().regions, visit), visit.warnings, "2098-12-31").size(), asked);
    const QString words =
        banner().findChildren<QPushButton *>().at(0)->text() + banner().findChildren<QPushButton *>().at(1)->text();
    EXPECT_TRUE(words.contains(QStringLiteral("%1 to ask").arg(asked))) << words.toStdString();
}

TEST_F(Misuse, Mis22AConsentThatBeginsTomorrow)
{
    const std::string tomorrow = dayFrom(today(), 1);
    ASSERT_TRUE(session().answerConsent({"cupping", ConsentState::Given, tomorrow, {}, {}, {}, {}}).ok());
    const auto isDueNow = [&] {
        const auto items = session().consentsDue();
        return std::any_of(items.begin(), items.end(), [](const ConsentItem *i) { return i->id == "cupping"; });
    };
    EXPECT_TRUE(isDueNow()) << "it covers nothing today";
    ConsentDialog dialog(session(), &window());
    bool isTold = false;
    const auto &list = *dialog.findChild<QListWidget *>();
    for (int row = 0; row < list.count(); ++row)
        isTold = isTold
            || list.item(row)->text().contains(QStringLiteral("to ask again: given on %1").arg(QString::fromStdString(tomorrow)));
    EXPECT_TRUE(isTold);
    EXPECT_EQ(stored().consents.front().asked, tomorrow) << "the day is not moved by itself";
    ASSERT_TRUE(session().answerConsent({"cupping", ConsentState::Given, today(), {}, {}, {}, {}}).ok());
    EXPECT_FALSE(isDueNow());
}

TEST_F(Misuse, Mis24AnswersFromBeforeTheBirth)
{
    Visit visit = session().visit();
    visit.date = "2031-03-12";
    visit.patient->born = "1974-05-06";
    for (const WarningSign *s : session().warningsToAsk())
        visit.warnings.push_back({s->id, false, "1899-12-31", {}, {}, {}, {}});
    ASSERT_TRUE(session().practice().saveVisit(session().visitId(), writeVisit(visit)).ok());
    ASSERT_TRUE(session().open(session().visitId()).ok());
    EXPECT_EQ(session().warningsToAsk().size(), visit.warnings.size());
    EXPECT_EQ(stored().warnings, visit.warnings) << "kept, with the odd day";
}

TEST_F(Misuse, Mis29EnterIsHeldOnAllUnchanged)
{
    Visit before = session().visit();
    before.date = dayFrom(today(), -400);
    before.complaintAt = {{{"posterior-cervical-region"}, Side::Left}};
    before.complaints = {Complaint{}};
    before.complaints.front().text = "neck after work";
    before.warnings = {{"past-cancer", false, before.date, {}, {}, {}, {}}, {"fever-now", false, before.date, {}, {}, {}, {}},
        {"chest-pain-now", true, before.date, {}, Decision::EmergencyServices, "crushing", "ambulance"}};
    ASSERT_TRUE(session().practice().saveVisit(session().visitId(), writeVisit(before)).ok());
    window().visitPanel().newVisit();
    beginIntake();
    const auto open = due();
    QPushButton *same = button(window().intake(), QStringLiteral("All the rest is as it was"));
    same->setFocus();
    QTest::keyClick(same, Qt::Key_Space);
    for (int i = 0; i < 100; ++i) { // ten seconds of a held key
        QWidget *focus = QApplication::focusWidget() ? QApplication::focusWidget() : &window();
        QKeyEvent press(QEvent::KeyPress, Qt::Key_Return, {}, QStringLiteral("\r"), true);
        QApplication::sendEvent(focus, &press);
    }
    const auto after = due(); // where it hurts is told now, and its signs come on top
    for (const auto &sign : open)
        EXPECT_NE(std::find(after.begin(), after.end(), sign), after.end()) << "no stale answer is confirmed: " << sign;
    EXPECT_TRUE(isDue("chest-pain-now") && isDue("past-cancer") && isDue("fever-now"));
    EXPECT_EQ(session().visit().complaints.front().asked, today());
    EXPECT_EQ(stored().complaints.size(), 1U);
    EXPECT_TRUE(findings().empty()) << "the key does nothing in the examination";
    EXPECT_EQ(session().practice().history(session().visitId()).value().size(), 0U);
}

TEST_F(Misuse, Mis32TheProgramIsKilledBeforeTheDecision)
{
    hurtsAt("lumbar-region-medial", Side::Left);
    ask([&](WarningsDialog &dialog) {
        yes(dialog, "cauda-equina-both-legs-weak", [&](DecisionDialog &decision) {
            // What a process that is killed here leaves behind.
            const Visit left = onDisk();
            ASSERT_EQ(left.warnings.size(), 1U) << "the yes is on disk the moment it is given";
            EXPECT_TRUE(left.warnings.front().isThere);
            EXPECT_FALSE(left.warnings.front().decided);
            EXPECT_TRUE(cautionsOf(left).isBarred({{"soleus"}, Side::Left}));
            fill(decision, QStringLiteral("weak since noon"), QStringLiteral("ambulance, 10:42"));
        });
        dialog.accept();
    });
    ASSERT_TRUE(QTest::qWaitFor([&] { return onDisk().warnings.front().decided.has_value(); }));
    const auto visit = session().visitId();
    session().close();
    ASSERT_TRUE(session().open(visit).ok());
    expectNothingOffered("after the second kill");
    EXPECT_TRUE(bannerWords().startsWith(QStringLiteral("STOP")));
    EXPECT_EQ(answered("cauda-equina-both-legs-weak")->told, "ambulance, 10:42");
}

// A yes by a slip of the hand can be said at once, before anything is decided; then nothing is recorded.
TEST_F(Misuse, Mis32AndASlipIsTakenBack)
{
    ask([&](WarningsDialog &dialog) {
        yes(dialog, "chest-pain-now", [&](DecisionDialog &decision) {
            EXPECT_TRUE(session().isLocked());
            QTest::mouseClick(button(decision, QStringLiteral("It was a slip")), Qt::LeftButton);
        });
        dialog.accept();
    });
    EXPECT_FALSE(session().isLocked());
    EXPECT_TRUE(stored().warnings.empty());
}

TEST_F(Misuse, Mis34AColleagueOpensTheLockedVisit)
{
    emergency();
    ASSERT_TRUE(session().saveNow().ok());
    ASSERT_TRUE(session().practice().addAccount({"owner", "Second Hand", "another for the test", leastCost}).ok());
    const std::string words = "another for the test";
    auto other = Practice::unlock(practice(), "owner", words);
    ASSERT_TRUE(other.ok()) << inWords(other.error());
    VisitSession theirs(learned(), std::move(other).value());
    ASSERT_TRUE(theirs.open(session().visitId()).ok());
    EXPECT_TRUE(theirs.isLocked());
    ASSERT_EQ(theirs.visit().warnings.size(), 1U);
    EXPECT_EQ(theirs.visit().warnings.front().why, "crushing on effort");
    EXPECT_EQ(
        theirs.answerWarning({"chest-pain-now", false, theirs.visit().date, {}, {}, {}, {}}).error().code, ErrorCode::NotAllowed);
    ASSERT_TRUE(theirs
                    .answerWarning({"chest-pain-now", true, theirs.visit().date, {}, Decision::EmergencyServices,
                        "crushing on effort", "emergency service, 10:42; family, 10:50"})
                    .ok());
    EXPECT_TRUE(theirs.isLocked());
    ASSERT_TRUE(theirs.sign("").ok()); // who wrote it is who signs it
    EXPECT_EQ(theirs.practice().history(theirs.visitId()).value().back().author, "Second Hand");
    EXPECT_TRUE(theirs.isLocked());
}

TEST_F(Misuse, Mis35ASecondVisitOnTheSameDay)
{
    emergency();
    ASSERT_TRUE(session().saveNow().ok());
    const auto first = session().visitId();
    const auto second = session().startVisit(session().patientId());
    ASSERT_TRUE(second.ok());
    ASSERT_TRUE(session().open(second.value()).ok());
    expectNothingOffered("another visit");
    EXPECT_TRUE(bannerWords().contains(QStringLiteral("Chest pain")));
    ASSERT_TRUE(answered("chest-pain-now"));
    EXPECT_EQ(answered("chest-pain-now")->told, "emergency service, 10:42");
    for (const std::string &id : due())
        ASSERT_TRUE(answer(id.c_str(), false).ok());
    EXPECT_EQ(answer("chest-pain-now", false).error().code, ErrorCode::NotAllowed);
    expectNothingOffered("every other sign answered no");
    ASSERT_TRUE(session().open(first).ok());
    EXPECT_TRUE(session().isLocked()) << "the first visit is there as it was";
}

TEST_F(Misuse, Mis36UndoFiftyTimes)
{
    finds("soleus", Side::Right);
    session().setPain({PainPatch{View::Back, Side::Midline, {{{{40, 400}}, 12}}, {}, {}, {}, false}});
    ASSERT_TRUE(answer("thunderclap-headache", true).ok());
    for (int i = 0; i < 50; ++i)
        key(Qt::Key_Z, Qt::ControlModifier);
    EXPECT_TRUE(findings().empty());
    expectNothingOffered("undone");
    key(Qt::Key_Y, Qt::ControlModifier);
    key(Qt::Key_Z, Qt::ControlModifier | Qt::ShiftModifier);
    while (session().undoStack().canRedo())
        session().undoStack().redo();
    EXPECT_EQ(findings().size(), 1U) << "redo brings all back";
    EXPECT_EQ(session().visit().pain.size(), 1U);
    expectNothingOffered("done again");
}

TEST_F(Misuse, Mis37EveryKeyOfALockedVisit)
{
    finds("soleus", Side::Right);
    emergency();
    const Visit before = session().visit();
    QTimer closes; // whatever a key opens
    QObject::connect(&closes, &QTimer::timeout, [] {
        if (auto *dialog = qobject_cast<QDialog *>(QApplication::activeModalWidget()))
            dialog->reject();
        else if (QWidget *popup = QApplication::activePopupWidget())
            popup->close();
    });
    closes.start(1);
    std::vector<std::pair<Qt::Key, Qt::KeyboardModifiers>> keys{{Qt::Key_Return, {}}, {Qt::Key_Space, {}}, {Qt::Key_Escape, {}},
        {Qt::Key_Return, Qt::ControlModifier}, {Qt::Key_Tab, Qt::ControlModifier}};
    for (int k = Qt::Key_A; k <= Qt::Key_Z; ++k)
        if (k != Qt::Key_S && k != Qt::Key_L && k != Qt::Key_Q) // signing, locking and leaving are no treatment
            keys.emplace_back(static_cast<Qt::Key>(k), Qt::AltModifier);
    for (int k = Qt::Key_F1; k <= Qt::Key_F12; ++k)
        keys.emplace_back(static_cast<Qt::Key>(k), Qt::NoModifier);
    for (const auto &[k, modifiers] : keys) {
        key(k, modifiers);
        QCoreApplication::processEvents();
        ASSERT_TRUE(session().isLocked()) << k;
        window().help().close(); // the keys that follow are for the window
        QApplication::setActiveWindow(&window());
    }
    for (int i = 0; i < 60; ++i)
        key(Qt::Key_Tab, i % 2 == 0 ? Qt::NoModifier : Qt::ShiftModifier);
    SearchBox &search = *window().findChild<SearchBox *>();
    search.setFocus();
    search.insert(QStringLiteral("left glute max released 60 s"));
    key(Qt::Key_Return);
    QCoreApplication::processEvents();
    expectNothingOffered("every key");
    EXPECT_EQ(session().visit().warnings, before.warnings);
    EXPECT_EQ(session().visit().findings.size(), before.findings.size());
    EXPECT_TRUE(banner().isVisible());
    const QLabel *words = banner().findChild<QLabel *>();
    EXPECT_TRUE(words->text().startsWith(QStringLiteral("STOP: Chest pain"))) << "why, and what to do";
    EXPECT_TRUE(words->text().contains(QString::fromStdString(sign("chest-pain-now").act)));
    EXPECT_EQ(words->accessibleName(), QStringLiteral("What must be respected with this patient")) << "for who cannot see it";
}

TEST_F(Misuse, Mis38TheProgramWithoutAWindow)
{
    finds("soleus", Side::Right);
    emergency();
    const QString locked = written(session().visit(), "locked.json");
    const Ran cautionsOut = run({QStringLiteral("cautions"), QStringLiteral("--visit"), locked});
    EXPECT_TRUE(cautionsOut.out.contains(QStringLiteral("chest-pain-now"))) << cautionsOut.out.toStdString();
    const Ran reason = run({QStringLiteral("reason"), QStringLiteral("--visit"), locked});
    const auto answered = nlohmann::json::parse(reason.out.toStdString());
    EXPECT_TRUE(answered.at("treat").empty()) << "nothing to be treated";
    const auto printed = [&](const char *verb, const QString &visit, const char *name) {
        const Ran ran = run({QString::fromUtf8(verb), QStringLiteral("--visit"), visit, QStringLiteral("--out"), inFolder(name)});
        EXPECT_EQ(ran.status, 0) << verb << ": " << ran.err.toStdString();
        return textOf(inFolder(name));
    };
    const QString ask = QString::fromStdString(sign("chest-pain-now").ask).left(30);
    EXPECT_TRUE(printed("map", locked, "map.pdf").contains(QStringLiteral("Get medical help at once")))
        << "on the page that goes home";
    EXPECT_TRUE(printed("letter", locked, "letter.pdf").contains(ask)) << "in the letter";
    // A copy from which the answers were taken says that the signs were not asked, and the visit in the practice stays locked.
    Visit bare = session().visit();
    bare.warnings.clear();
    const Ran unasked = run({QStringLiteral("reason"), QStringLiteral("--visit"), written(bare, "bare.json")});
    const auto open = nlohmann::json::parse(unasked.out.toStdString());
    EXPECT_TRUE(unasked.out.contains(QStringLiteral("chest-pain-now")))
        << "among what is to be asked: " << open.dump(1).substr(0, 400);
    EXPECT_TRUE(onDisk().warnings.size() == 1);
    expectNothingOffered("the copy changes nothing");
}

TEST_F(Misuse, Mis40TheVisitIsMovedAway)
{
    const auto begun = session().startVisit(session().patientId()); // another visit of the day, begun before
    finds("soleus", Side::Right);
    emergency();
    PatientRecord other;
    other.name = "Right One";
    const auto first = session().patientId();
    const auto second = session().practice().addPatient(other).value();
    ASSERT_TRUE(session().moveTo(second, "wrong patient chosen").ok());
    expectNothingOffered("the lock goes with the visit");
    EXPECT_EQ(session().visit().findings.size(), 1U) << "with all that it holds";
    const auto history = session().practice().history(session().visitId()).value();
    ASSERT_EQ(history.size(), 1U);
    EXPECT_EQ(history[0].reason, "wrong patient chosen");

    // The first patient keeps a visit of the day that says what was moved away, by whom and why.
    const auto left = session().practice().visits(first).value();
    ASSERT_EQ(left.size(), 2U);
    ASSERT_TRUE(session().open(left.front().id).ok());
    expectNothingOffered("until it was asked of them");
    EXPECT_TRUE(bannerWords().contains(QStringLiteral("Test Hand moved to another patient (wrong patient chosen)")))
        << bannerWords().toStdString();
    EXPECT_TRUE(isDue("chest-pain-now")) << "is it theirs after all?";

    // So does their next visit, and one that was begun before; the answer of this patient settles it for that visit.
    for (const auto id : {session().startVisit(first).value(), begun.value()}) {
        ASSERT_TRUE(session().open(id).ok());
        expectNothingOffered("a visit of the day");
        ask([&](WarningsDialog &dialog) {
            QTest::mouseClick(
                button(dialog, QStringLiteral("No: ") + QString::fromStdString(sign("chest-pain-now").ask)), Qt::LeftButton);
            dialog.accept();
        });
        EXPECT_FALSE(session().isLocked()) << bannerWords().toStdString();
        reopen();
        EXPECT_FALSE(session().isLocked()) << "asked and answered";
    }
    ASSERT_TRUE(session().open(left.front().id).ok());
    EXPECT_TRUE(session().isLocked()) << "the mark stays where it was left";
    emergency();
    EXPECT_FALSE(answered("chest-pain-now")->isMoved) << "it was theirs too";
    EXPECT_TRUE(session().isLocked());
    EXPECT_FALSE(answer("chest-pain-now", false).ok());
}

TEST_F(Misuse, Mis41TheAnswerIsAmended)
{
    finds("soleus", Side::Right);
    emergency();
    ASSERT_TRUE(session().sign("").ok());
    expectNothingOffered("signed");
    ASSERT_TRUE(session().beginAmendment().ok());
    expectNothingOffered("while it is amended");
    EXPECT_FALSE(answer("chest-pain-now", false).ok()) << "a yes is not made a no";
    WarningAnswer corrected = *answered("chest-pain-now");
    corrected.why += "; later: the patient misunderstood the question";
    ASSERT_TRUE(session().answerWarning(corrected).ok()) << "what is known since can be written beside it";
    finds("tibialis-anterior", Side::Right); // what was done before can be put down
    ASSERT_TRUE(session().sign("patient misunderstood the question").ok());
    expectNothingOffered("amended");
    reopen();
    expectNothingOffered("and opened again");
    EXPECT_TRUE(run({QStringLiteral("cautions"), QStringLiteral("--visit"), written(session().visit())})
                    .out.contains(QStringLiteral("chest-pain-now")));
    const auto history = session().practice().history(session().visitId()).value();
    ASSERT_EQ(history.size(), 2U);
    EXPECT_EQ(history[1].reason, "patient misunderstood the question");
    const auto first = readVisit(history[0].document, "first", *knowledge().atlas);
    ASSERT_TRUE(first.ok());
    EXPECT_EQ(first.value().warnings.at(0).why, "crushing on effort") << "the first word stays legible";
    EXPECT_TRUE(first.value().warnings.at(0).isThere);
    EXPECT_EQ(first.value().findings.size(), 1U);
}

TEST_F(Misuse, Mis39TheClockIsChanged)
{
    finds("soleus", Side::Right);
    emergency();
    const std::string day = today();
    for (const std::string &clock : {dayFrom(day, 3), dayFrom(day, -1), std::string("1970-01-01"), dayFrom(day, 4000)}) {
        Visit visit = session().visit();
        visit.date = clock;
        EXPECT_NE(lockAmong(cautionsOf(visit).general()), nullptr) << "the lock hangs on the visit: " << clock;
        const auto advice = adviser().advise(visit, "visit");
        ASSERT_TRUE(advice.ok());
        EXPECT_TRUE(advice.value().treatment.treat.empty()) << clock;
        // An answer that seems to be of the future, or is old, is asked again.
        const WarningSigns &signs = adviser().rules().signs();
        const auto again = dueSigns(signs, askedOf(signs, *knowledge().regions, visit), visit.warnings, clock);
        EXPECT_TRUE(std::any_of(again.begin(), again.end(), [](const WarningSign *s) { return s->id == "chest-pain-now"; }))
            << clock;
    }
    EXPECT_EQ(stored().warnings.front().asked, day) << "no time is rewritten";
}

TEST_F(Misuse, Mis43CuppingIsTakenBack)
{
    const std::string day = today();
    const Place back{{"erector-spinae"}, Side::Right};
    ASSERT_TRUE(session().answerConsent({"cupping", ConsentState::Given, day, {}, {}, {}, {}}).ok());
    EXPECT_FALSE(cautions().stopOf(back, "suction"));
    ASSERT_TRUE(session().answerConsent({"cupping", ConsentState::Withdrawn, day, {}, {}, {}, "it hurts"}).ok());
    for (const char *action :
        {"suction", "gliding-suction"}) // there are no techniques of other names: what is done is what counts
        EXPECT_TRUE(cautions().stopOf(back, action)) << action;
    EXPECT_FALSE(cautions().stopOf(back, "gliding")) << "what it did not cover";
    EXPECT_FALSE(session().isLocked());
    ASSERT_TRUE(session().saveNow().ok());
    const auto next = session().startVisit(session().patientId()); // what is carried over brings no old yes along
    ASSERT_TRUE(next.ok());
    ASSERT_TRUE(session().open(next.value()).ok());
    EXPECT_TRUE(cautions().stopOf(back, "suction"));
    EXPECT_TRUE(bannerWords().isEmpty() || session().standingVerdicts().front().reason.find("taken back") != std::string::npos);
    ASSERT_TRUE(session().answerConsent({"cupping", ConsentState::Given, day, {}, {}, {}, "asked anew"}).ok());
    EXPECT_FALSE(cautions().stopOf(back, "suction"));
}

} // namespace raphe::test
