// What the readers of content (safety, examination, techniques) have in common; inside guarded() only, as JsonReader.
#pragma once

#include "core/anatomy/Atlas.h"
#include "core/base/JsonReader.h"

#include <algorithm>

namespace raphe::content {

template <class T> const T *findById(const std::vector<T> &list, std::string_view id)
{
    const auto it = std::find_if(list.begin(), list.end(), [&](const T &item) { return item.id == id; });
    return it == list.end() ? nullptr : &*it;
}

template <class T> bool isIn(const std::vector<T> &list, const T &item)
{
    return std::find(list.begin(), list.end(), item) != list.end();
}

/// Version 1 of the format.
void expectFormat(const JsonReader &root, std::string_view format);
/// Not empty.
[[nodiscard]] std::string readText(const JsonReader &owner, std::string_view name);
/// The id of a surface region of the atlas.
[[nodiscard]] StructureId readRegion(const JsonReader &at, const Atlas &atlas);

/// An id that none of the earlier items has.
template <class T> std::string readNewId(const JsonReader &owner, const std::vector<T> &earlier)
{
    std::string id = owner.string("id");
    if (!isWellFormed(StructureId{id}))
        owner.field("id").fail(ErrorCode::BadId, id);
    if (findById(earlier, id))
        owner.field("id").fail(ErrorCode::Duplicate, id);
    return id;
}

template <class T> std::string readKnownId(const JsonReader &at, const std::vector<T> &known)
{
    std::string id = at.asString();
    if (!findById(known, id))
        at.fail(ErrorCode::UnknownId, id);
    return id;
}

/// A list that may be left out, but not be empty: an empty one would ask for nothing, which means the opposite.
template <class F> auto readChoice(const JsonReader &owner, std::string_view name, F readOne)
{
    std::vector<decltype(readOne(owner))> out;
    if (!owner.has(name))
        return out;
    for (const JsonReader &item : owner.field(name).items()) {
        auto one = readOne(item);
        if (isIn(out, one))
            item.fail(ErrorCode::Duplicate, item.asString());
        out.push_back(std::move(one));
    }
    if (out.empty())
        owner.fail(ErrorCode::MissingField, std::string(name));
    return out;
}

} // namespace raphe::content
