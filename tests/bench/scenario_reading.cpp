// Reading a file of fifteen loads beside parsing its text alone, and beside changing one value.
#include <algorithm>
#include <chrono>
#include <cstdio>
#include <string>
#include <vector>

#include "engine/scenario/sample.hpp"
#include "scenario/file/document.hpp"
#include "scenario/file/read.hpp"
#include "scenario/file/save.hpp"

namespace {

std::string fifteen_loads() {
    std::string text(sample::ice_storm);
    for (int i = 0; i < 13; ++i) {
        text += "\n[[load]]\nname = \"load " + std::to_string(i) +
                "\"\nfrom = \"ac\"\npower = \"60 W\"\nhours = [\"06:00-07:00\", \"17:30-22:00\"]\n"
                "priority = 3\nevidence = \"guess\"\n";
    }
    return text;
}

// Median microseconds of many runs.
template <class Work>
double microseconds(Work work) {
    std::vector<double> times;
    for (int i = 0; i < 401; ++i) {
        const auto begin = std::chrono::steady_clock::now();
        work();
        const std::chrono::duration<double, std::micro> time =
            std::chrono::steady_clock::now() - begin;
        times.push_back(time.count());
    }
    std::ranges::nth_element(times, times.begin() + 200);
    return times[200];
}

}  // namespace

int main() {
    const std::string text = fifteen_loads();
    std::size_t seen = 0;
    const double parse =
        microseconds([&] { seen += scenario::read_document(text, "")->entries.size(); });
    const double read = microseconds(
        [&] { seen += scenario::read_scenario(text, "plan.toml")->scenario.loads.size(); });
    const double change = microseconds(
        [&] { seen += scenario::with_value(text, "pack.expansion.count", "4")->size(); });
    std::printf("%zu bytes, %zu seen\n", text.size(), seen);
    std::printf("parse  %8.1f us  1.00\n", parse);
    std::printf("read   %8.1f us  %.2f\n", read, read / parse);
    std::printf("change %8.1f us  %.2f\n", change, change / parse);
}
