// A file is saved while every single call may fail: it is then as it was or as it is to be, and
// nothing is said to be saved that is not.
#include "scenario/file/saving.hpp"

#include <array>
#include <cerrno>
#include <cstdio>
#include <fcntl.h>
#include <filesystem>
#include <fstream>
#include <gmock/gmock.h>
#include <map>
#include <sched.h>
#include <sstream>
#include <sys/file.h>
#include <sys/mount.h>
#include <sys/resource.h>
#include <sys/stat.h>
#include <sys/wait.h>
#include <thread>
#include <unistd.h>

#include "failing_calls.hpp"
#include <gtest/gtest.h>

namespace {

namespace fs = std::filesystem;
using failing::How;
using scenario::SaveEnd;
using testing::HasSubstr;

const std::string old_text = "# as it was\ntitle = \"before\"\n";
// Larger than one look reads at once.
const std::string new_text = "title = \"after\"\n# " + std::string(150'000, 'x') + "\n";

std::string bytes_of(const fs::path& path) {
    std::ifstream file(path, std::ios::binary);
    std::ostringstream bytes;
    bytes << file.rdbuf();
    return bytes.str();
}

void write(const fs::path& path, const std::string& bytes) {
    std::ofstream(path, std::ios::binary) << bytes;
}

class Saved : public testing::Test {
  protected:
    void SetUp() override {
        std::string pattern = testing::TempDir() + "candlemark_XXXXXX";
        ASSERT_NE(mkdtemp(pattern.data()), nullptr);
        folder = pattern;
        path = folder / "plan.toml";
        write(path, old_text);
        chmod(folder.c_str(), 0777);
    }
    void TearDown() override {
        chmod(folder.c_str(), 0777);
        fs::remove_all(folder);
    }
    [[nodiscard]] long things_in_folder() const {
        return std::distance(fs::directory_iterator(folder), {});
    }
    // What a process of its own exits with; -1 when a signal ended it.
    template <class Doing>
    static int exit_of(const Doing& doing) {
        const pid_t child = fork();
        if (child == 0) {
            _exit(doing());
        }
        int status = 0;
        waitpid(child, &status, 0);
        return WIFEXITED(status) ? WEXITSTATUS(status) : -1;
    }
    // The superuser may write anywhere, a person may not.
    static void become_nobody() {
        if (geteuid() == 0) {
            constexpr uid_t nobody = 65534;
            if (setresgid(nobody, nobody, nobody) != 0 || setresuid(nobody, nobody, nobody) != 0) {
                _exit(99);
            }
        }
    }

    fs::path folder;
    fs::path path;
};

TEST_F(Saved, holds_the_text_and_nothing_is_left_beside_it) {
    ASSERT_TRUE(scenario::save_file(path, "first"));
    ASSERT_TRUE(scenario::save_file(path, new_text));
    EXPECT_EQ(bytes_of(path), new_text);
    EXPECT_EQ(things_in_folder(), 1);
}

TEST_F(Saved, keeps_its_permissions_and_its_link) {
    ASSERT_EQ(chmod(path.c_str(), 0640), 0);
    const fs::path link = folder / "link.toml";
    fs::create_symlink("plan.toml", link);
    ASSERT_TRUE(scenario::save_file(link, "second"));
    EXPECT_TRUE(fs::is_symlink(link));
    EXPECT_EQ(bytes_of(path), "second");
    struct stat status = {};
    ASSERT_EQ(stat(path.c_str(), &status), 0);
    EXPECT_EQ(status.st_mode & 07777, 0640U);
}

TEST_F(Saved, where_a_link_leads_though_nothing_is_there_yet) {
    const fs::path link = folder / "link.toml";
    fs::create_symlink("later.toml", link);
    ASSERT_TRUE(scenario::save_file(link, "first"));
    EXPECT_TRUE(fs::is_symlink(link));
    EXPECT_EQ(bytes_of(folder / "later.toml"), "first");
    const fs::path circle = folder / "circle.toml";
    fs::create_symlink("circle.toml", circle);
    EXPECT_FALSE(scenario::save_file(circle, "first"));
}

TEST_F(Saved, a_new_file_gets_what_the_process_gives_new_files) {
    const mode_t mask = umask(027);
    const fs::path made = folder / "made.toml";
    ASSERT_TRUE(scenario::save_file(made, "first"));
    umask(mask);
    struct stat status = {};
    ASSERT_EQ(stat(made.c_str(), &status), 0);
    EXPECT_EQ(status.st_mode & 07777, 0640U);
}

TEST_F(Saved, under_the_longest_name_there_is) {
    const fs::path longest = folder / std::string(255, 'n');
    ASSERT_TRUE(scenario::save_file(longest, "first"));
    ASSERT_TRUE(scenario::save_file(longest, "second"));
    EXPECT_EQ(bytes_of(longest), "second");
}

TEST_F(Saved, every_byte_as_it_is) {
    std::string bytes = "\xEF\xBB\xBF# caf\xE9\r\n";
    bytes += '\0';
    ASSERT_TRUE(scenario::save_bytes(path, bytes).saved());
    EXPECT_EQ(bytes_of(path), bytes);
}

struct Sum {
    long injected = 0;
    std::map<std::string, int> failed;
};

// Every call once for each n until none is left to fail. After each: old or new, and new where it
// is said to be saved.
template <class Save>
void fail_every_call(const fs::path& path, int error, How how, const Save& save, Sum& sum) {
    for (long n = 1;; ++n) {
        write(path, old_text);
        failing::begin(n, error, how);
        const scenario::Saving saving = save();
        const failing::Calls calls = failing::end();
        const std::string left = bytes_of(path);
        const bool whole = left == old_text || left == new_text;
        EXPECT_TRUE(whole) << "call " << n << ", error " << error << ": " << left.size()
                           << " bytes";
        EXPECT_TRUE(!saving.saved() || left == new_text) << "call " << n << ", error " << error;
        const bool unharmed = saving.saved() || saving.end == SaveEnd::unsettled;
        EXPECT_TRUE(unharmed || left == old_text) << "call " << n << ", error " << error;
        for (const auto& [name, times] : calls.failed) {
            sum.failed[name] += times;
            sum.injected += times;
        }
        if (calls.made < n) {
            EXPECT_TRUE(saving.saved()) << "nothing failed";
            return;
        }
        for (const auto& beside : fs::directory_iterator(path.parent_path())) {
            if (beside.path() != path) fs::remove(beside.path());  // unlink itself failed
        }
    }
}

TEST_F(Saved, whichever_call_fails_the_file_is_old_or_new) {
    Sum sum;
    const std::string name = path;
    const auto unasked = [&] { return scenario::save_bytes(name, new_text); };
    const auto over = [&] { return scenario::save_bytes_over(name, old_text, new_text); };
    for (const int error : {EIO, ENOSPC, EDQUOT, EACCES, EROFS, ENOENT, ENOMEM}) {
        for (const How how : {How::once, How::ever_after}) {
            fail_every_call(path, error, how, unasked, sum);
            fail_every_call(path, error, how, over, sum);
        }
    }
    fail_every_call(path, 0, How::short_once, unasked, sum);
    for (const char* const name : {"memory", "open", "write", "pread", "fsync", "close", "rename",
                                   "fstat", "stat", "fchmod", "flock", "getrandom", "readlink"}) {
        EXPECT_GT(sum.failed[name], 0) << name;
    }
    std::printf("%ld faults injected\n", sum.injected);
    EXPECT_GT(sum.injected, 500);
}

TEST_F(Saved, whenever_the_process_is_killed_the_file_is_old_or_new) {
    int killed = 0;
    for (long n = 1;; ++n) {
        write(path, old_text);
        const int exit = exit_of([&] {
            failing::begin(n, 0, How::killed);
            const bool saved = scenario::save_bytes_over(path, old_text, new_text).saved();
            failing::end();
            return saved ? 0 : 1;
        });
        const std::string left = bytes_of(path);
        ASSERT_TRUE(left == old_text || left == new_text) << "call " << n;
        if (exit >= 0) {
            EXPECT_EQ(exit, 0);
            break;
        }
        ++killed;
    }
    std::printf("killed at %d calls\n", killed);
    EXPECT_GT(killed, 15);
}

TEST_F(Saved, over_another_programs_text_only_when_asked) {
    write(path, "somebody else's");
    EXPECT_EQ(scenario::save_bytes_over(path, old_text, new_text).end, SaveEnd::changed_outside);
    EXPECT_EQ(bytes_of(path), "somebody else's");
    EXPECT_TRUE(scenario::save_bytes_over(path, "somebody else's", new_text).saved());
    // The same text from another hand is no other text; a file that is gone is made again.
    EXPECT_TRUE(scenario::save_bytes_over(path, old_text, new_text).saved());
    fs::remove(path);
    EXPECT_TRUE(scenario::save_bytes_over(path, old_text, new_text).saved());
    EXPECT_EQ(bytes_of(path), new_text);
}

TEST_F(Saved, by_many_at_once_one_after_the_other) {
    // Each adds a line to what it read and saves over just that; none may be lost.
    constexpr int hands = 4;
    constexpr int lines = 25;
    write(path, "");
    std::array<std::thread, hands> threads;
    char letter = 'a';
    for (std::thread& thread : threads) {
        thread = std::thread([this, letter] {
            for (int done = 0; done < lines;) {
                const std::string before = bytes_of(path);
                const std::string after = before + letter + '\n';
                done += scenario::save_bytes_over(path, before, after).saved() ? 1 : 0;
            }
        });
        ++letter;
    }
    for (std::thread& thread : threads) {
        thread.join();
    }
    EXPECT_EQ(bytes_of(path).size(), std::size_t{2 * hands * lines});
}

TEST_F(Saved, not_while_another_program_holds_the_file) {
    const int held = open(path.c_str(), O_RDONLY | O_CLOEXEC);
    ASSERT_EQ(flock(held, LOCK_EX), 0);
    EXPECT_EQ(scenario::save_bytes_over(path, old_text, new_text).end, SaveEnd::held);
    EXPECT_EQ(bytes_of(path), old_text);
    close(held);
    EXPECT_TRUE(scenario::save_bytes_over(path, old_text, new_text).saved());
}

TEST_F(Saved, is_refused_in_words_where_there_is_no_folder) {
    for (const char* const there : {"no/such/plan.toml", "plan.toml/plan.toml"}) {
        const auto saved = scenario::save_file(folder / there, "text");
        ASSERT_FALSE(saved);
        EXPECT_THAT(units::print(saved.error().front()), HasSubstr("its folder is not there"));
    }
    EXPECT_EQ(scenario::save_bytes(folder, "text").end, SaveEnd::not_a_plain_file);
    ASSERT_EQ(mkfifo((folder / "pipe").c_str(), 0600), 0);
    EXPECT_EQ(scenario::save_bytes(folder / "pipe", "text").end, SaveEnd::not_a_plain_file);
    EXPECT_EQ(scenario::save_bytes("/dev/null", "text").end, SaveEnd::not_a_plain_file);
}

TEST_F(Saved, is_refused_in_words_by_a_folder_that_is_only_read) {
    chmod(path.c_str(), 0666);
    chmod(folder.c_str(), 0555);
    const int exit = exit_of([&] {
        become_nobody();
        const auto saved = scenario::save_file(path, new_text);
        return !saved && units::print(saved.error().front())
                                 .find(
                                     "nothing can be written in its "
                                     "folder") != std::string::npos
                   ? 0
                   : 1;
    });
    EXPECT_EQ(exit, 0);
    EXPECT_EQ(bytes_of(path), old_text);
}

TEST_F(Saved, is_refused_by_a_file_that_is_write_protected) {
    chmod(path.c_str(), 0444);
    const int exit = exit_of([&] {
        become_nobody();
        return scenario::save_bytes(path, new_text).end == SaveEnd::write_protected ? 0 : 1;
    });
    EXPECT_EQ(exit, 0);
    EXPECT_EQ(bytes_of(path), old_text);
}

TEST_F(Saved, beyond_a_limit_of_size_says_so_and_goes_on) {
    const int exit = exit_of([&] {
        const rlimit limit = {.rlim_cur = 4096, .rlim_max = 4096};
        setrlimit(RLIMIT_FSIZE, &limit);
        const auto saved = scenario::save_file(path, new_text);
        const bool told =
            !saved && units::print(saved.error().front()).find("larger than") != std::string::npos;
        // The signal that would have ended the program has gone.
        sigset_t pending;
        sigpending(&pending);
        return told && sigismember(&pending, SIGXFSZ) == 0 &&
                       scenario::save_bytes(path, old_text).saved()
                   ? 0
                   : 1;
    });
    EXPECT_EQ(exit, 0);
    EXPECT_EQ(bytes_of(path), old_text);
    EXPECT_EQ(things_in_folder(), 1);
}

// A disk of its own, as small as wanted. False where the system does not let us have one.
bool on_a_small_disk(const fs::path& folder, const char* options) {
    const int spaces = CLONE_NEWNS | (geteuid() == 0 ? 0 : CLONE_NEWUSER);
    return unshare(spaces) == 0 && mount("none", "/", nullptr, MS_REC | MS_PRIVATE, nullptr) == 0 &&
           mount("none", folder.c_str(), "tmpfs", 0, options) == 0;
}

TEST_F(Saved, on_a_full_disk_says_so_and_the_file_is_as_it_was) {
    constexpr int no_disk = 77;
    const int exit = exit_of([&] {
        if (!on_a_small_disk(folder, "size=64k")) {
            return no_disk;
        }
        write(path, old_text);
        std::ofstream filler(folder / "filler");
        filler << std::string(100'000, 'f');
        filler.close();
        const auto full = scenario::save_file(path, new_text);
        const auto over = scenario::save_bytes_over(path, old_text, new_text);
        // Not even a name fits.
        for (int n = 0; n < 5000 && std::ofstream(folder / std::to_string(n)); ++n) {
        }
        const auto no_name = scenario::save_bytes(path, "short");
        const bool told =
            !full && units::print(full.error().front()).find("the disk or the quota is full") !=
                         std::string::npos;
        return told && over.end == SaveEnd::no_room && no_name.end != SaveEnd::failed &&
                       bytes_of(path) == (no_name.saved() ? "short" : old_text)
                   ? 0
                   : 1;
    });
    if (exit == no_disk) {
        GTEST_SKIP() << "no small disk can be made here";
    }
    EXPECT_EQ(exit, 0);
}

}  // namespace
