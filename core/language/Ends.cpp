#include "core/language/Ends.h"

#include <algorithm>

namespace raphe::language {

namespace {

void addEnds(const Structure &structure, const LineWords &words, std::vector<End> &out)
{
    const auto add = [&](const std::vector<StructureId> &ends, Spot spot) {
        for (const StructureId &id : ends) {
            const Structure *end = words.atlas().find(id);
            if (!end)
                continue;
            const End found{static_cast<std::size_t>(end - words.atlas().structures().data()), spot};
            if (std::find(out.begin(), out.end(), found) == out.end())
                out.push_back(found);
        }
    };
    for (const Attachment &attachment : structure.attachments) {
        add(attachment.origins, Spot::Origin);
        add(attachment.insertions, Spot::Insertion);
    }
}

} // namespace

std::vector<End> endsOf(const Structure &structure, const LineWords &words)
{
    std::vector<End> out;
    addEnds(structure, words, out);
    for (const StructureId &part : words.atlas().partsOf(structure.id))
        addEnds(words.atlas().at(part), words, out);
    return out;
}

std::vector<End> endsAt(const Structure &structure, const Mark &landmark, const LineWords &words)
{
    std::vector<End> out;
    const auto ends = endsOf(structure, words);
    for (const End &end : ends)
        if (std::find(landmark.structures.begin(), landmark.structures.end(), end.structure) != landmark.structures.end())
            out.push_back(end);
    if (!out.empty())
        return out;
    for (const std::size_t index : landmark.structures) {
        const Structure &bone = words.atlas().structures()[index];
        if (bone.kind != Kind::Bone)
            continue;
        for (const End &end : ends) {
            const auto bones = words.atlas().bonesOf(words.atlas().structures()[end.structure].id);
            if (std::find(bones.begin(), bones.end(), bone.id) != bones.end())
                out.push_back(end);
        }
    }
    return out;
}

} // namespace raphe::language
