// Work on a practice that is open in another thread: it is opened once more with the same keys, for a Practice belongs to the
// thread that made it.
#pragma once

#include "core/store/Practice.h"

#include <utility>

namespace raphe {

/// For inBackground(). `work` takes the Practice and answers with a Result; an error of opening becomes its error.
template <class Work> [[nodiscard]] auto onPractice(const Practice &practice, Work work)
{
    return [file = practice.file(), keys = practice.keys(),
               work = std::move(work)]() mutable -> decltype(work(std::declval<Practice &>())) {
        const auto opened = Practice::open(file, keys);
        if (!opened)
            return opened.error();
        return work(*opened.value());
    };
}

} // namespace raphe
