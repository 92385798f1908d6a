#include "scenario/file/named_file.hpp"

#include <algorithm>
#include <filesystem>
#include <mutex>
#include <system_error>

#include "units/quote.hpp"

namespace scenario {
namespace {

namespace fs = std::filesystem;

struct Places {
    std::mutex lock;
    std::vector<std::string> paths;
};

Places& places_allowed() {
    // Never taken down: what allows a place may live as long as the program.
    static Places& places = *new Places;
    return places;
}

std::vector<std::string> allowed_now() {
    Places& places = places_allowed();
    const std::scoped_lock held(places.lock);
    return places.paths;
}

// A folder or file as it is written and as it is with its links followed.
struct Root {
    fs::path written;
    fs::path real;
};

fs::path without_last_slash(fs::path path) {
    return path.has_filename() || path == path.root_path() ? path : path.parent_path();
}

Root root_of(const std::string& path) {
    std::error_code failed;
    const fs::path whole = fs::absolute(path.empty() ? "." : path, failed);
    const fs::path real = fs::canonical(whole, failed);
    const fs::path written = without_last_slash(whole.lexically_normal());
    return {.written = written, .real = failed ? written : real};
}

bool is_within(const fs::path& path, const fs::path& root) {
    return std::ranges::mismatch(root, path).in1 == root.end();
}

bool may_lie(const fs::path& path, const std::vector<Root>& roots) {
    return std::ranges::any_of(roots, [&](const Root& root) {
        return is_within(path, root.written) || is_within(path, root.real);
    });
}

}  // namespace

AlsoAllowed::AlsoAllowed(std::vector<std::string> paths) : paths_(std::move(paths)) {
    Places& places = places_allowed();
    const std::scoped_lock held(places.lock);
    places.paths.insert(places.paths.end(), paths_.begin(), paths_.end());
}

AlsoAllowed::~AlsoAllowed() {
    Places& places = places_allowed();
    const std::scoped_lock held(places.lock);
    for (const std::string& path : paths_) {
        places.paths.erase(std::ranges::find(places.paths, path));
    }
}

units::Result<std::string> path_of_named_file(const std::string& name, const std::string& folder,
                                              const std::string& key) {
    std::vector<Root> roots{root_of(folder)};
    std::vector<fs::path> tried;
    if (name.find('\0') == std::string::npos) {  // the system would read it to there only
        tried.push_back(fs::path(folder) / name);
    }
    for (const std::string& other : allowed_now()) {
        roots.push_back(root_of(other));
        if (!tried.empty() && !fs::path(name).is_absolute()) {
            tried.push_back(fs::path(other) / name);
        }
    }
    bool outside = false;
    for (const fs::path& path : tried) {
        std::error_code failed;
        if (!may_lie(fs::absolute(path, failed).lexically_normal(), roots)) {
            outside = true;
            continue;
        }
        const fs::path real = fs::canonical(path, failed);
        if (failed) {
            continue;
        }
        if (may_lie(real, roots)) {
            return path.string();
        }
        outside = true;
    }
    const std::string shown = units::quote(name, 80);
    return outside
               ? units::fail(units::Error{
                     .where = key,
                     .found =
                         words::said<"\"{file}\" lies outside the folder of the scenario">(shown),
                     .remedy = words::said<
                         "put the file beside the scenario; or allow its folder with "
                         "--weather-from FOLDER, on the screen by choosing the file">()})
               : units::fail(units::Error{
                     .where = key,
                     .found = words::said<"there is no file \"{file}\"">(shown),
                     .remedy =
                         words::said<"give the path of the file, relative to the scenario">()});
}

}  // namespace scenario
