#include "core/examination/AccuracyWords.h"

#include <QCoreApplication>
#include <QStringList>

namespace raphe {

namespace {

QString tr(const char *text)
{
    return QCoreApplication::translate("Accuracy", text);
}

QString decimals(double value)
{
    return QString::number(value, 'f', 2);
}

QString inWords(const ConfidenceInterval &interval)
{
    //: a 95 % interval
    return tr(QT_TRANSLATE_NOOP("Accuracy", "%1 to %2")).arg(decimals(interval.low), decimals(interval.high));
}

} // namespace

std::string inWords(const Share &share)
{
    //: %1 of %2: counts of patients; %3: a 95 % interval
    return tr(QT_TRANSLATE_NOOP("Accuracy", "%1 of %2 (%3)"))
        .arg(QString::number(share.count), QString::number(share.of), inWords(share.interval()))
        .toStdString();
}

std::string inWords(const std::optional<Ratio> &ratio)
{
    if (!ratio)
        return tr(QT_TRANSLATE_NOOP("Accuracy", "cannot be reckoned")).toStdString();
    return tr(QT_TRANSLATE_NOOP("Accuracy", "%1 (%2)")).arg(decimals(ratio->value), inWords(ratio->interval)).toStdString();
}

std::string sourceInWords(const Examination &examination, const std::string &source, Reading read)
{
    const ExamSource *found = examination.findSource(source);
    const QString citation = QString::fromStdString(found ? found->citation : source);
    switch (read) {
    case Reading::Memory: return tr(QT_TRANSLATE_NOOP("Accuracy", "%1 (figures from memory)")).arg(citation).toStdString();
    case Reading::Abstract:
        return tr(QT_TRANSLATE_NOOP("Accuracy", "%1 (figures from the abstract)")).arg(citation).toStdString();
    case Reading::Page: break;
    }
    return citation.toStdString();
}

std::string inWords(const Accuracy &accuracy, const Examination &examination)
{
    QStringList parts;
    const auto add = [&](const char *what, const std::string &value) { parts << tr(what).arg(QString::fromStdString(value)); };
    if (const auto &table = accuracy.table) {
        add(QT_TRANSLATE_NOOP("Accuracy", "sensitivity %1"), inWords(sensitivity(*table)));
        add(QT_TRANSLATE_NOOP("Accuracy", "specificity %1"), inWords(specificity(*table)));
        add(QT_TRANSLATE_NOOP("Accuracy", "likelihood ratio of a positive answer %1"), inWords(positiveRatio(*table)));
        add(QT_TRANSLATE_NOOP("Accuracy", "of a negative one %1"), inWords(negativeRatio(*table)));
    } else {
        add(QT_TRANSLATE_NOOP("Accuracy", "sensitivity %1"), decimals(*accuracy.sensitivity).toStdString());
        add(QT_TRANSLATE_NOOP("Accuracy", "specificity %1, intervals not known"), decimals(*accuracy.specificity).toStdString());
    }
    if (accuracy.people)
        add(QT_TRANSLATE_NOOP("Accuracy", "%1 people"), std::to_string(*accuracy.people));
    const QString whose = accuracy.against.empty()
        ? QString::fromStdString(accuracy.setting)
        //: %1: whose patients; %2: a reference standard
        : tr(QT_TRANSLATE_NOOP("Accuracy", "%1, against %2"))
              .arg(QString::fromStdString(accuracy.setting), QString::fromStdString(accuracy.against));
    //: %1: whose patients; %2: figures; %3: the source
    return tr(QT_TRANSLATE_NOOP("Accuracy", "%1: %2. %3"))
        .arg(whose, parts.join(QStringLiteral(", ")),
            QString::fromStdString(sourceInWords(examination, accuracy.source, accuracy.read)))
        .toStdString();
}

} // namespace raphe
