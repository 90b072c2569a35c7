#include "core/examination/ComparingWords.h"

#include <QCoreApplication>
#include <QStringList>

#include <cmath>

namespace raphe {

namespace {

QString tr(const char *text)
{
    return QCoreApplication::translate("Comparing", text);
}

QString amount(const Movement &movement, double value)
{
    return QString::fromStdString(valueInWords(movement, value));
}

QString shortSource(const std::string &id, Reading read)
{
    QString name = QString::fromStdString(shortNameOf(id));
    switch (read) {
    case Reading::Memory: return tr(QT_TRANSLATE_NOOP("Comparing", "%1, from memory")).arg(name);
    case Reading::Abstract: return tr(QT_TRANSLATE_NOOP("Comparing", "%1, from the abstract")).arg(name);
    case Reading::Page: break;
    }
    return name;
}

QString kindInWords(ErrorKind kind)
{
    switch (kind) {
    case ErrorKind::Mdc90: return tr(QT_TRANSLATE_NOOP("Comparing", "smallest detectable change at 90 %"));
    case ErrorKind::Mdc95: return tr(QT_TRANSLATE_NOOP("Comparing", "smallest detectable change at 95 %"));
    case ErrorKind::Sdc: return tr(QT_TRANSLATE_NOOP("Comparing", "smallest detectable change"));
    case ErrorKind::Sem: break;
    }
    return tr(QT_TRANSLATE_NOOP("Comparing", "reckoned from the standard error of measurement"));
}

QString modeInWords(MoveMode mode)
{
    return mode == MoveMode::Active ? tr(QT_TRANSLATE_NOOP("Comparing", "active"))
                                    : tr(QT_TRANSLATE_NOOP("Comparing", "passive"));
}

QString people(const Norm &norm)
{
    const QString years = norm.from == norm.to ? QString::number(norm.from) : QStringLiteral("%1-%2").arg(norm.from).arg(norm.to);
    if (!norm.sex)
        return tr(QT_TRANSLATE_NOOP("Comparing", "people of %1 years")).arg(years);
    return (*norm.sex == Sex::Female ? tr(QT_TRANSLATE_NOOP("Comparing", "women of %1 years"))
                                     : tr(QT_TRANSLATE_NOOP("Comparing", "men of %1 years")))
        .arg(years);
}

QString whyNone(NoNorm why)
{
    switch (why) {
    case NoNorm::NotMeasured: return tr(QT_TRANSLATE_NOOP("Comparing", "not measured"));
    case NoNorm::ModeUnknown: return tr(QT_TRANSLATE_NOOP("Comparing", "usual range: say whether it was active or passive"));
    case NoNorm::DeviceUnknown: return tr(QT_TRANSLATE_NOOP("Comparing", "usual range: say what it was measured with"));
    case NoNorm::AgeUnknown: return tr(QT_TRANSLATE_NOOP("Comparing", "usual range: the record has no birth date"));
    case NoNorm::SexUnknown: return tr(QT_TRANSLATE_NOOP("Comparing", "usual range: the record does not say the sex"));
    case NoNorm::NonePublished: break;
    }
    return tr(QT_TRANSLATE_NOOP("Comparing", "usual range: none known for this way of measuring"));
}

} // namespace

std::string shortNameOf(const std::string &source)
{
    QStringList parts = QString::fromStdString(source).split(QLatin1Char('-'));
    for (QString &part : parts)
        part[0] = part[0].toUpper();
    return parts.join(QLatin1Char(' ')).toStdString();
}

std::string valueInWords(const Movement &movement, double value)
{
    const double shown = std::round(value * 10) / 10;
    const QString number = QString::number(shown, 'f', shown == std::round(shown) ? 0 : 1);
    return (movement.unit == Unit::Degrees ? tr(QT_TRANSLATE_NOOP("Comparing", "%1 degrees"))
                                           : tr(QT_TRANSLATE_NOOP("Comparing", "%1 mm")))
        .arg(number)
        .toStdString();
}

std::string inWords(const Movement &movement, const SideComparison &sides)
{
    QString words;
    if (sides.difference == 0)
        words = tr(QT_TRANSLATE_NOOP("Comparing", "RIGHT and LEFT the same"));
    else if (sides.difference < 0)
        words = tr(QT_TRANSLATE_NOOP("Comparing", "RIGHT %1 less than LEFT")).arg(amount(movement, -sides.difference));
    else
        words = tr(QT_TRANSLATE_NOOP("Comparing", "LEFT %1 less than RIGHT")).arg(amount(movement, sides.difference));
    if (!sides.error)
        //: %1: a difference of two sides
        return tr(QT_TRANSLATE_NOOP("Comparing", "%1: error of measuring unknown")).arg(words).toStdString();
    const QString verdict = sides.beyond == Beyond::Beyond
        //: %1: a difference of two sides; %2: an amount; %3: what kind of error; %4: the source
        ? tr(QT_TRANSLATE_NOOP("Comparing", "%1: more than the error of measuring (%2, %3; %4)"))
        : tr(QT_TRANSLATE_NOOP("Comparing", "%1: within the error of measuring (%2, %3; %4)"));
    return verdict
        .arg(words, amount(movement, sides.error->least()), kindInWords(sides.error->kind),
            shortSource(sides.error->source, sides.error->read))
        .toStdString();
}

std::string inWords(const Movement &movement, const NormComparison &norm)
{
    if (!norm.norm)
        return whyNone(norm.why).toStdString();
    const Norm &n = *norm.norm;
    QString words = norm.difference == 0 ? tr(QT_TRANSLATE_NOOP("Comparing", "at the mean"))
        : norm.difference < 0 ? tr(QT_TRANSLATE_NOOP("Comparing", "%1 below the mean")).arg(amount(movement, -norm.difference))
                              : tr(QT_TRANSLATE_NOOP("Comparing", "%1 above the mean")).arg(amount(movement, norm.difference));
    if (norm.z)
        //: %1: a difference from a mean; %2: a number
        words = tr(QT_TRANSLATE_NOOP("Comparing", "%1 (%2 standard deviations)")).arg(words, QString::number(*norm.z, 'f', 1));
    //: %1: a difference from a mean; %2: whose; %3: the mean; %4: active or passive; %5: the source
    words = tr(QT_TRANSLATE_NOOP("Comparing", "%1 of %2: %3, %4 (%5)"))
                .arg(words, people(n), amount(movement, n.mean), modeInWords(n.mode), shortSource(n.source, n.read));
    if (const Norm *other = norm.other)
        //: %1: all that was said of one source; %2: whose; %3: the mean; %4: the source
        words = tr(QT_TRANSLATE_NOOP("Comparing", "%1; another sample, %2: %3 (%4)"))
                    .arg(words, people(*other), amount(movement, other->mean), shortSource(other->source, other->read));
    return words.toStdString();
}

} // namespace raphe
