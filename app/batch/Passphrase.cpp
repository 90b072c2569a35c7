#include "app/batch/Passphrase.h"

#include <QString>

#include <cerrno>
#include <cstring>
#include <fcntl.h>
#include <termios.h>
#include <unistd.h>

namespace raphe::batch {

namespace {

// Up to the end of the line; one byte at a time, so that nothing behind it is taken from who reads on.
Result<std::string> lineFrom(int descriptor)
{
    std::string line;
    char c = 0;
    while (true) {
        const ssize_t got = read(descriptor, &c, 1);
        if (got < 0 && errno == EINTR)
            continue;
        if (got < 0)
            return Error{ErrorCode::CannotRead, "--passphrase-fd " + std::to_string(descriptor), std::strerror(errno)};
        if (got == 0 || c == '\n')
            break;
        line += c;
    }
    return QString::fromStdString(line).normalized(QString::NormalizationForm_C).toStdString();
}

} // namespace

Result<std::string> passphrase(std::optional<int> descriptor)
{
    if (descriptor)
        return lineFrom(*descriptor);
    const int terminal = open("/dev/tty", O_RDWR | O_CLOEXEC | O_NOCTTY);
    if (terminal < 0)
        return Error{ErrorCode::BadArgument, "passphrase", "there is no terminal to ask at: give --passphrase-fd"};
    constexpr std::string_view question = "Passphrase: ";
    termios shown{};
    const bool isTerminal = tcgetattr(terminal, &shown) == 0;
    termios hidden = shown;
    hidden.c_lflag &= ~static_cast<tcflag_t>(ECHO);
    if (isTerminal)
        tcsetattr(terminal, TCSAFLUSH, &hidden);
    static_cast<void>(!write(terminal, question.data(), question.size()));
    auto line = lineFrom(terminal);
    static_cast<void>(!write(terminal, "\n", 1));
    if (isTerminal)
        tcsetattr(terminal, TCSAFLUSH, &shown);
    close(terminal);
    return line;
}

} // namespace raphe::batch
