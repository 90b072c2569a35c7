// The practice file: any bytes, or a sound file with edits, is opened or refused. Whatever is wrong with it, no reader does more
// than fail with a place; and when `verify` holds nothing in it reads other than it was written.
// Input: the first byte says what follows.
//   'f' a file as it is
//   'b' edits of a sound file, five bytes each: where (three, little endian, modulo its size), what ('=' set, '^' flip, '/' cut
//       the file there), the byte
//   'c' changes of cells, each: table, column, row, what ('n' null, 'i' a number of eight bytes, 't' text, 'b' bytes, 'r' the
//       cell of another row, 'x' one bit of it, '<' its first bytes, 'd' the row is deleted, '+' the row a second time), then for
//       't' and 'b' a length of one byte and so many, else one byte
#include "tests/fuzz/Expect.h"
#include "tests/fuzz/SmallPractice.h"
#include "tests/support/storage/StorageShim.h"

#include "core/base/JsonReader.h"
#include "core/store/Backup.h"
#include "core/store/Export.h"
#include "core/store/PlainPractice.h"

#include <array>
#include <cstddef>
#include <cstdint>
#include <filesystem>

namespace {

using namespace raphe;
using fuzz::expect;

// Takes the input from the front; zeros when it is at its end.
class Input {
public:
    Input(const std::uint8_t *data, std::size_t size) : m_rest(reinterpret_cast<const char *>(data), size) { }

    [[nodiscard]] bool atEnd() const { return m_rest.empty(); }
    std::uint8_t byte()
    {
        const std::string one = bytes(1);
        return one.empty() ? std::uint8_t{0} : static_cast<std::uint8_t>(one[0]);
    }
    std::string bytes(std::size_t count)
    {
        const std::string out(m_rest.substr(0, count));
        m_rest.remove_prefix(out.size());
        return out;
    }
    std::string rest() { return bytes(m_rest.size()); }
    std::int64_t number(std::size_t size)
    {
        std::uint64_t out = 0;
        for (std::size_t i = 0; i < size; ++i)
            out |= static_cast<std::uint64_t>(byte()) << (8 * i);
        return static_cast<std::int64_t>(out);
    }

private:
    std::string_view m_rest;
};

std::string edited(std::string bytes, Input &input)
{
    while (!input.atEnd()) {
        const std::size_t at = static_cast<std::size_t>(input.number(3)) % bytes.size();
        const auto what = input.byte();
        const auto value = input.byte();
        if (what == '/')
            bytes.resize(std::max<std::size_t>(at, 1));
        else
            bytes[at] = static_cast<char>(what == '^' ? static_cast<std::uint8_t>(bytes[at]) ^ value : value);
    }
    return bytes;
}

struct Table {
    const char *name;
    const char *id;
    std::vector<const char *> columns;
};
const std::array<Table, 6> tables{{
    {"practice", "id", {"id", "ident", "changes", "recovery_box", "settings", "recovery", "journal_key"}},
    {"account", "id", {"id", "sign_in", "changes", "salt", "passes", "memory_bytes", "signs", "box", "seed", "file_key", "card"}},
    {"patient", "id", {"id", "changes", "merged_into", "patient_key", "record"}},
    {"visit", "id", {"id", "patient", "changes", "state", "document"}},
    {"entry", "number",
        {"number", "made_at", "account", "kind", "patient", "visit", "content", "content_hash", "previous", "signature"}},
    {"head", "id", {"id", "seal"}},
}};

void changeCell(const Database &db, Input &input)
{
    const Table &table = tables[input.byte() % tables.size()];
    const std::string column = table.columns[input.byte() % table.columns.size()];
    const std::int64_t row = input.byte();
    const auto what = input.byte();
    const std::string name = table.name;
    const std::string id = table.id;
    const auto set = [&](const Value &value) {
        db.run("UPDATE " + name + " SET " + column + " = ? WHERE " + id + " = ?", {value, row});
    };
    const auto now = [&]() -> Blob {
        Rows rows = db.run("SELECT " + column + " FROM " + name + " WHERE " + id + " = ?", {row});
        return rows.next() ? rows.blob(0) : Blob{};
    };
    switch (what) {
    case 'n': set({}); break;
    case 'i': set(input.number(8)); break;
    case 't': set(input.bytes(input.byte())); break;
    case 'b': {
        const std::string bytes = input.bytes(input.byte());
        set(Blob(bytes.begin(), bytes.end()));
        break;
    }
    case 'r':
        db.run("UPDATE " + name + " SET " + column + " = (SELECT " + column + " FROM " + name + " WHERE " + id + " = ?) WHERE "
                + id + " = ?",
            {std::int64_t{input.byte()}, row});
        break;
    case 'x': {
        Blob blob = now();
        const std::uint8_t bit = input.byte();
        if (!blob.empty())
            blob[(bit / 8U) % blob.size()] ^= static_cast<std::uint8_t>(1U << (bit % 8U));
        set(blob);
        break;
    }
    case '<': {
        Blob blob = now();
        blob.resize(std::min<std::size_t>(blob.size(), input.byte()));
        set(blob);
        break;
    }
    case 'd': db.run("DELETE FROM " + name + " WHERE " + id + " = ?", {row}); break;
    case '+': {
        std::string others;
        for (const char *other : table.columns)
            others += other == id ? std::string("?") : ", " + std::string(other);
        db.run("INSERT INTO " + name + " SELECT " + others + " FROM " + name + " WHERE " + id + " = ?",
            {std::int64_t{input.byte()}, row});
        break;
    }
    default: break;
    }
}

// What SQLite itself refuses is left out.
void changeCells(const std::string &file, Input &input)
{
    static_cast<void>(guarded([&]() -> Done {
        const Database db(file);
        db.run("PRAGMA ignore_check_constraints = ON");
        while (!input.atEnd())
            static_cast<void>(guarded([&]() -> Done {
                changeCell(db, input);
                return {};
            }));
        return {};
    }));
}

// Whether a guess costs little; what the bounds allow takes seconds, which is no hang.
bool isCheap(const std::string &file)
{
    const auto cheap = guarded([&]() -> bool {
        const Database db(file);
        return db.number("SELECT COUNT(*) FROM account WHERE passes > 4 OR memory_bytes > 1000000") == 0;
    });
    return cheap && cheap.value();
}

template <class T> void expectPlace(const Result<T> &result)
{
    if (!result)
        expect(!result.error().place.empty(), "an error has a place", result.error().detail);
}

void useFile(const std::string &file, bool ours)
{
    static const std::string whole = [] {
        const std::string path = fuzz::workFolder() + "/whole.raphe";
        fuzz::putFile(path, fuzz::smallPractice().bytes);
        const auto practice = Practice::open(path, fuzz::smallPractice().keys);
        expect(practice.ok() && practice.value()->verify().ok(), "the small practice is sound");
        return fuzz::allOf(*practice.value(), true);
    }();
    expectPlace(isPlainPractice(file));
    const auto checked = checkWithoutKey(file);
    expectPlace(checked);
    auto practice = isCheap(file) ? Practice::unlock(file, fuzz::smallSignIn, fuzz::smallPassphrase)
                                  : Practice::open(file, fuzz::smallPractice().keys);
    expectPlace(practice);
    bool isSound = false;
    if (practice) {
        const auto verified = practice.value()->verify();
        expectPlace(verified);
        isSound = ours && verified;
        const std::string read = fuzz::allOf(*practice.value(), verified.ok());
        if (verified) {
            expect(checked.ok(), "what verifies can be checked without a key too");
            expect(!isSound || read == whole, "what verifies reads as it was written", read);
        }
        for (const std::int64_t patient : {1, 2}) // the second was joined to the first
            expectPlace(exportPatient(*practice.value(), patient));
    }
    if (!checked)
        return; // a restore begins with the same check
    const std::string restored = fuzz::workFolder() + "/watched/restored.raphe";
    fuzz::putFile(restored, fuzz::smallPractice().bytes);
    const auto back = restore(file, restored);
    expectPlace(back);
    expect(!isSound || (back && back.value().empty()), "what verifies says who was erased");
    expect(std::filesystem::exists(restored), "a restore leaves a file in its place");
}

} // namespace

extern "C" int LLVMFuzzerTestOneInput(const std::uint8_t *data, std::size_t size);
int LLVMFuzzerTestOneInput(const std::uint8_t *data, std::size_t size)
{
    const std::string watched = fuzz::workFolder() + "/watched";
    std::filesystem::remove_all(watched);
    std::filesystem::create_directories(watched);
    const std::string file = watched + "/input.raphe";
    Input input(data, size);
    const std::uint8_t kind = input.byte();
    const test::StorageShim shim(watched); // it leaves syncs out, which is most of the time
    if (kind == 'b') {
        fuzz::putFile(file, edited(fuzz::smallPractice().bytes, input));
    } else if (kind == 'c') {
        fuzz::putFile(file, fuzz::smallPractice().bytes);
        changeCells(file, input);
    } else {
        fuzz::putFile(file, input.rest());
    }
    useFile(file, kind == 'b' || kind == 'c');
    return 0;
}
