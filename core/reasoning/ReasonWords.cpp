#include "core/reasoning/ReasonWords.h"

#include <QCoreApplication>
#include <QStringList>

#include <cmath>

namespace raphe {

namespace {

QString tr(const char *text)
{
    return QCoreApplication::translate("Reason", text);
}

QString spoken(const Atlas &atlas, const Place &place)
{
    return QString::fromStdString(atlas.spoken(place));
}

// 'A', 'A and B', 'A, B and C'.
QString listed(const QStringList &names)
{
    if (names.size() < 2)
        return names.join(QString());
    return tr(QT_TRANSLATE_NOOP("Reason", "%1 and %2"))
        .arg(names.mid(0, names.size() - 1).join(QStringLiteral(", ")), names.back());
}

} // namespace

std::string linkedInWords(const Atlas &atlas, const std::vector<PathStep> &path)
{
    if (path.empty())
        return {};
    return QCoreApplication::translate("Reason", "%1: %2.")
        .arg(QString::fromStdString(pathInWords(atlas, path)), QString::fromStdString(gradeInWords(weakestOf(path))))
        .toStdString();
}

std::string explainedInWords(const Atlas &atlas, const Suggestion &s)
{
    QStringList fits;
    QStringList against;
    bool foundHere = false;
    constexpr double worthSaying = 0.05; // bits
    constexpr int saidAtMost = 3;
    for (const Term &term : s.terms) {
        if (!term.at || std::abs(term.value) < worthSaying)
            continue;
        if (*term.at == s.place && term.value > 0) {
            foundHere = true;
            continue;
        }
        QStringList &list = term.value > 0 ? fits : against;
        if (const QString name = spoken(atlas, *term.at); list.size() < saidAtMost && !list.contains(name))
            list.push_back(name);
    }
    QStringList said;
    if (foundHere)
        said.push_back(tr(QT_TRANSLATE_NOOP("Reason", "found here")));
    if (!fits.empty())
        said.push_back((foundHere ? tr(QT_TRANSLATE_NOOP("Reason", "and tied to what was found at %1"))
                                  : tr(QT_TRANSLATE_NOOP("Reason", "tied to what was found at %1")))
                           .arg(listed(fits)));
    if (!against.empty())
        said.push_back(tr(QT_TRANSLATE_NOOP("Reason", "against it: %1 clear")).arg(listed(against)));
    if (said.empty())
        said.push_back(tr(QT_TRANSLATE_NOOP("Reason", "possible before any finding; nothing found speaks for it")));
    QString sentence = said.join(QStringLiteral(", ")) + QLatin1Char('.');
    sentence[0] = sentence[0].toUpper();
    return sentence.toStdString();
}

std::string separatedInWords(const Atlas &atlas, const Place &place, const Place &one, const std::optional<Place> &other)
{
    const QString first = spoken(atlas, one);
    const QString second = other ? spoken(atlas, *other) : QString();
    QString why;
    if (one == place)
        why = other ? tr(QT_TRANSLATE_NOOP("Reason", "Would tell whether it is this or %1.")).arg(second)
                    : tr(QT_TRANSLATE_NOOP("Reason", "Would tell whether it is this at all."));
    else
        why = other ? tr(QT_TRANSLATE_NOOP("Reason", "Would separate %1 from %2.")).arg(first, second)
                    : tr(QT_TRANSLATE_NOOP("Reason", "Would tell whether %1 explains it at all.")).arg(first);
    return why.toStdString();
}

} // namespace raphe
