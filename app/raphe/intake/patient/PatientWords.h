// The patient's texts by id, in the patient's language, ready for a widget. Keeps the texts; the window's thread.
#pragma once

#include "core/anatomy/Atlas.h"
#include "core/document/PatientTexts.h"

#include <QString>

namespace raphe {

class PatientWords {
public:
    explicit PatientWords(PatientTexts texts, const Phrases &phrases = Phrases())
        : m_language(phrases.code()), m_texts(inLanguage(std::move(texts), phrases))
    {
    }

    /// The id itself where there is no such text, so that nothing is silently missing.
    [[nodiscard]] QString say(const char *id) const
    {
        const PatientText *text = m_texts.find(id);
        return QString::fromStdString(text ? text->text : std::string(id));
    }
    [[nodiscard]] QString say(const char *id, const std::vector<std::pair<std::string, std::string>> &values) const
    {
        return QString::fromStdString(filled(say(id).toStdString(), values));
    }
    /// Without its full stop.
    [[nodiscard]] QString onButton(const char *id) const
    {
        QString text = say(id);
        if (text.endsWith(QLatin1Char('.')))
            text.chop(1);
        return text;
    }

    /// A part of the body as patients call it, without its side.
    [[nodiscard]] std::string nameOf(const Atlas &atlas, const StructureId &structure) const
    {
        return atlas.plainName(structure, m_language);
    }

private:
    std::string m_language;
    PatientTexts m_texts;
};

} // namespace raphe
