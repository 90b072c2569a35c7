// raphe: the window on a practice file.
#include "app/raphe/Program.h"
#include "core/store/crypto/NoDumps.h"

int main(int argc, char **argv)
{
    raphe::refuseDumps();
    return raphe::runProgram(argc, argv);
}
