// The smallest program that links the whole core. LinkedLibrariesTest looks at what it links: no window, no painting.
#include "core/anatomy/AtlasReader.h"

#include <cstdio>

int main()
{
    const auto atlas = raphe::readEmbeddedAtlas();
    if (!atlas) {
        std::fprintf(stderr, "%s: %s\n", atlas.error().place.c_str(), atlas.error().detail.c_str());
        return 1;
    }
    std::printf("%zu structures\n", atlas.value().structures().size());
    return 0;
}
