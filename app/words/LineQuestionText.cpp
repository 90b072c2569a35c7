#include "app/words/LineQuestionText.h"

#include <QCoreApplication>

namespace raphe {

namespace {

QString tr(const char *text)
{
    return QCoreApplication::translate("LineQuestionText", text);
}

// %1: the typed words.
QString pattern(Doubt doubt)
{
    switch (doubt) {
    case Doubt::NameOfSeveral: return tr("Which structure is '%1'?");
    case Doubt::SideMissing: return tr("Which side is '%1'?");
    case Doubt::NamesSideBySide: return tr("'%1' stands directly behind another name. Part the two by a comma, or say 'and'.");
    case Doubt::SideOfEither: return tr("Does '%1' belong to what stands before it, or to what follows?");
    case Doubt::OnlyMidline: return tr("'%1': this is recorded in the midline only. Is the midline meant?");
    case Doubt::SideOfVertebra: return tr("'%1': a vertebra is in the midline. Which segment, or which part of it, is meant?");
    case Doubt::LevelOrSide: return tr("Is '%1' the vertebra, or the left side and a grade?");
    case Doubt::LetterAndNumber: return tr("What does '%1' mean here?");
    case Doubt::NumberWithoutScale: return tr("'%1' of what?");
    case Doubt::GradeRange: return tr("Which of the two in '%1'?");
    case Doubt::NoSpotThere:
        return tr("'%1': only muscles, fasciae, ligaments and tendons have such a spot. Which place is meant?");
    case Doubt::NoSuchEnd: return tr("It does not attach at '%1'. At which end was it?");
    case Doubt::EitherEnd: return tr("It attaches at '%1' with both ends. Origin or insertion?");
    case Doubt::PlayOfBone: return tr("Joint play belongs to a joint. Which joint of '%1'?");
    case Doubt::MovementOfSeveral: return tr("Which movement is '%1'?");
    case Doubt::JointMissing: return tr("'%1' of which joint?");
    case Doubt::ValueMissing: return tr("'%1': how much?");
    case Doubt::ValueBeyond: return tr("'%1' is more than this movement can be. What was measured?");
    case Doubt::UnitUnlike: return tr("This movement is not measured in '%1'. What was measured?");
    case Doubt::UnitMissing: return tr("'%1': millimetres or centimetres?");
    case Doubt::SayAnew:
        return tr("'%1' can be taken in more than one way. Say each place with its own side and what was found.");
    case Doubt::NothingSaid: return tr("'%1': what was found there?");
    case Doubt::ReasonMissing: return tr("'%1': why not? Write the reason behind it.");
    }
    return QStringLiteral("%1");
}

QString pattern(LineFault fault)
{
    switch (fault) {
    case LineFault::UnknownWords: return tr("'%1' is not known - correct it or take it out");
    case LineFault::NoSuchLevel: return tr("there is no level '%1' in the spine - correct the number");
    case LineFault::BothSides: return tr("'%1' says both sides of one place - take one out, or write 'both'");
    case LineFault::GradeBeyondScale:
        return tr("'%1' is no grade of this scale - tenderness goes from 0 to 4, stiffness from 0 to 3, joint play from 0 to 6");
    case LineFault::GradeTwice: return tr("'%1' says another grade of the same thing - take one out");
    case LineFault::Contradiction: return tr("'%1' contradicts itself - take out what was not found");
    case LineFault::NothingBefore: return tr("'%1' has no structure to speak of - name it first");
    case LineFault::PlayOfSoftTissue: return tr("'%1': only joints have play and an end feel - name the joint");
    case LineFault::NotOfMovement: return tr("'%1' is not said of a movement - name the structure that was felt");
    case LineFault::SideTwice: return tr("'%1': there are two values for one side - take one out");
    }
    return QStringLiteral("%1");
}

} // namespace

QString questionText(const LineQuestion &question)
{
    return pattern(question.doubt).arg(QString::fromStdString(question.words));
}

QString mistakeText(const LineMistake &mistake)
{
    return pattern(mistake.fault).arg(QString::fromStdString(mistake.words));
}

} // namespace raphe
