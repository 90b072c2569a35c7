// What a locked program still holds: its whole memory is searched for the words of the patient and the passphrase, which are
// found there before it locks.
#include "core/record/VisitJson.h"
#include "core/store/Practice.h"

#include <gtest/gtest.h>

#include <QProcess>
#include <QTemporaryDir>

#include <fstream>
#include <sstream>

namespace raphe::test {

namespace {

const std::string passphrase = "seven quiet herons wading";
const std::string name = "Quorvik Zandelle";
const std::string mark = "braided vermilion scarf";
const std::string caution = "tarsomyelic brooch under the skin"; // not a real thing, and nowhere else
const std::string complaint = "after hauling krillwood all sunday";

std::string wide(const std::string &ascii)
{
    std::string out;
    for (const char c : ascii)
        out.append({c, '\0'});
    return out;
}

// All that is mapped and can be read, searched range by range. Which of the words occur, in UTF-8 or UTF-16LE.
std::vector<std::string> wordsInMemory(qint64 process, const std::vector<std::string> &words)
{
    std::vector<std::string> found;
    std::ifstream maps("/proc/" + std::to_string(process) + "/maps");
    std::ifstream memory("/proc/" + std::to_string(process) + "/mem", std::ios::binary);
    EXPECT_TRUE(maps.good() && memory.good()) << "the memory cannot be read";
    std::size_t bytes = 0;
    for (std::string line; std::getline(maps, line);) {
        std::istringstream in(line);
        std::size_t begin = 0;
        std::size_t end = 0;
        char dash = 0;
        std::string rights;
        in >> std::hex >> begin >> dash >> end >> rights;
        constexpr std::size_t most = std::size_t{1} << 32; // larger ones are the address space that a sanitizer sets apart
        if (rights.empty() || rights[0] != 'r' || line.find("[v") != std::string::npos || end - begin > most)
            continue;
        std::string content(end - begin, '\0');
        memory.clear();
        memory.seekg(static_cast<std::streamoff>(begin));
        memory.read(content.data(), static_cast<std::streamsize>(content.size()));
        content.resize(static_cast<std::size_t>(std::max<std::streamsize>(0, memory.gcount())));
        bytes += content.size();
        for (const std::string &word : words)
            for (const std::string &form : {word, wide(word)})
                if (content.find(form) != std::string::npos)
                    found.push_back(word);
    }
    EXPECT_GT(bytes, std::size_t{20} * 1024 * 1024) << "hardly anything was read";
    std::sort(found.begin(), found.end());
    found.erase(std::unique(found.begin(), found.end()), found.end());
    return found;
}

// Waits for a line of the program; false when another or none comes.
bool says(QProcess &process, const char *word)
{
    while (!process.canReadLine())
        if (!process.waitForReadyRead(60'000))
            return false;
    const QByteArray line = process.readLine().trimmed();
    EXPECT_EQ(line.toStdString(), word);
    return line == word;
}

} // namespace

TEST(LockedProcess, HoldsNoWordOfThePatientAndNoPassphrase)
{
    const QTemporaryDir folder;
    const std::string file = folder.filePath(QStringLiteral("p.raphe")).toStdString();
    {
        auto made = Practice::make(file, {}, {"ada", "Ada Brook", passphrase, leastCost});
        ASSERT_TRUE(made.ok());
        PatientRecord record;
        record.name = name;
        record.mark = mark;
        const auto patient = made.value().practice->addPatient(record);
        ASSERT_TRUE(patient.ok());
        Visit visit;
        visit.patient = Patient{name, {}};
        visit.date = "2026-11-27";
        visit.cautions = {caution};
        ASSERT_TRUE(made.value().practice->addVisit(patient.value(), writeVisit(visit)).ok());
    }
    QProcess process;
    QProcessEnvironment environment = QProcessEnvironment::systemEnvironment();
    environment.insert(QStringLiteral("HOME"), folder.path());
    environment.insert(QStringLiteral("XDG_CONFIG_HOME"), folder.path());
    process.setProcessEnvironment(environment);
    process.setProcessChannelMode(QProcess::ForwardedErrorChannel);
    { // who signed in last is proposed
        QDir().mkpath(folder.filePath(QStringLiteral("Raphe")));
        std::ofstream(folder.filePath(QStringLiteral("Raphe/Raphe.conf")).toStdString()) << "[General]\nsign-in=ada\n";
    }
    process.start(QStringLiteral(RAPHE_LOCKED_PROGRAM), {QStringLiteral("--practice"), QString::fromStdString(file)});
    ASSERT_TRUE(process.waitForStarted());
    for (const std::string &line : {passphrase, name.substr(0, 4), complaint})
        process.write(QByteArray::fromStdString(line + "\n"));
    const std::vector<std::string> patientWords{name, mark, caution, complaint};
    std::vector<std::string> words = patientWords;
    words.push_back(passphrase);
    ASSERT_TRUE(says(process, "open"));
    auto all = patientWords;
    std::sort(all.begin(), all.end());
    const auto held = wordsInMemory(process.processId(), patientWords);
    EXPECT_EQ(held, all) << "else the search itself is blind";
    process.write("go on\n");
    ASSERT_TRUE(says(process, "locked"));
    const auto left = wordsInMemory(process.processId(), words);
    process.kill();
    process.waitForFinished();
    EXPECT_TRUE(left.empty()) << "still there: " << testing::PrintToString(left);

    // What was typed is in the file.
    auto practice = Practice::unlock(file, "ada", std::string_view(passphrase));
    ASSERT_TRUE(practice.ok());
    EXPECT_NE(practice.value()->visits(1).value().front().document.find(complaint), std::string::npos);
}

} // namespace raphe::test
