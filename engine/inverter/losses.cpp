#include "inverter/losses.hpp"

#include <algorithm>
#include <cassert>
#include <cmath>

#include <fmt/format.h>

#include "inverter/loss_fit.hpp"
#include "units/said.hpp"

namespace inverter {

namespace {

using units::watt;
using words::Said;
using words::said;

// A 12 V, 3 kW inverter of ordinary make: common practice, no source; method.md, "Where the file
// is silent".
constexpr double usual_idle_share = 0.01;
const std::vector<CurvePoint> usual_curve{{0.5, 0.91}, {1.0, 0.88}};

constexpr double alike = 0.0005;    // efficiencies that print alike
constexpr double rounding = 0.005;  // a printed efficiency is rounded to a point in a hundred
constexpr double tolerable = 0.03;  // method.md, "Accuracy and range"

words::Amount percent(double share) {
    return {.dimension = words::Dimension::fraction, .si = share};
}

Said practice() {
    return said<"common practice, no source">();
}

std::string key(std::size_t index) {
    return fmt::format("inverter.efficiency[{}]", index);
}

units::Errors impossible_figures(units::Power rating, std::optional<units::Power> idle,
                                 const std::vector<scenario::EfficiencyPoint>& stated) {
    units::Errors errors;
    if (idle && !(*idle >= 0.0 * watt && *idle < rating)) {
        errors.push_back({"inverter.idle", said<"{power}">(units::amount(*idle, 4)),
                          said<"give what it draws with nothing plugged in, such as 18 W">()});
    }
    for (std::size_t i = 0; i < stated.size(); ++i) {
        const double at = stated[i].at.value();
        const double is = stated[i].is.value();
        if (!(at > 0.0 && at <= 3.0)) {
            errors.push_back({key(i) + ".at", said<"{share} of the continuous rating">(percent(at)),
                              said<"give a share above 0 % and at most 300 %, such as 50 %">()});
        }
        if (!(is > 0.0 && is < 1.0)) {
            errors.push_back({key(i) + ".is",
                              said<"{efficiency}: no inverter gives all it takes">(percent(is)),
                              said<"give an efficiency above 0 and below 1, such as 0.90">()});
        }
        for (std::size_t j = 0; j < i; ++j) {
            if (stated[j].at == stated[i].at && stated[j].is != stated[i].is) {
                errors.push_back(
                    {key(i),
                     said<"{efficiency} at {share}, where {key} says {other}">(
                         percent(is), percent(at), key(j), percent(stated[j].is.value())),
                     said<"give one efficiency at each share of the rating">()});
            }
        }
    }
    return errors;
}

std::vector<CurvePoint> curve_of(const std::vector<scenario::EfficiencyPoint>& stated) {
    std::vector<CurvePoint> points;
    for (const scenario::EfficiencyPoint& point : stated) {
        points.push_back({point.at.value(), point.is.value()});
    }
    std::ranges::sort(points, {}, &CurvePoint::share);
    const auto repeated = std::ranges::unique(points, {}, &CurvePoint::share);
    points.erase(repeated.begin(), repeated.end());
    return points;
}

LossShares usual_shares() {
    return *nearest(usual_curve, usual_idle_share);
}

units::Result<LossShares> out_of_reach(const std::vector<CurvePoint>& points,
                                       std::optional<double> idle_share, units::Power rating) {
    const auto least = std::ranges::min_element(points, {}, &stated_loss_share);
    const double lost = stated_loss_share(*least) * (rating / watt);
    if (idle_share && *idle_share > stated_loss_share(*least)) {
        return units::fail(
            {"inverter.efficiency",
             said<"{efficiency} at {share} loses {loss}, less than the idle draw "
                  "of {idle}">(percent(least->efficiency), percent(least->share),
                               units::Power(lost * watt), units::Power(*idle_share * rating)),
             said<"an efficiency counts idle too: check both against the "
                  "manual">()});
    }
    return units::fail({"inverter.efficiency",
                        said<"no loss that grows with the load passes within 3 points of all "
                             "figures">(),
                        said<"check the efficiencies and the shares of the rating they belong "
                             "to">()});
}

// method.md (3) and (4): enough figures to decide every constant.
units::Result<LossShares> decided(const std::vector<CurvePoint>& points,
                                  std::optional<double> idle_share, units::Power rating) {
    const std::optional<LossShares> free = nearest(points, idle_share);
    const LossShares bounded = nearest_not_negative(points, idle_share);
    if (worst_miss(bounded, points) <= alike) {
        return bounded;
    }
    if (free && is_sound(*free) && worst_miss(*free, points) <= tolerable) {
        return *free;
    }
    if (worst_miss(bounded, points) <= tolerable) {
        return bounded;
    }
    return out_of_reach(points, idle_share, rating);
}

// method.md (5): one efficiency moves the usual curve up or down as a whole.
units::Result<LossShares> from_one(const CurvePoint& point, std::optional<double> idle_share,
                                   units::Power rating) {
    LossShares shares = usual_shares();
    const double fixed = idle_share.value_or(0.0);
    if (idle_share) {
        shares[0] = 0.0;
    }
    const double factor = (stated_loss_share(point) - fixed) / loss_share_at(shares, point.share);
    if (factor < 0.0) {
        return out_of_reach({point}, idle_share, rating);
    }
    return LossShares{idle_share ? fixed : factor * shares[0], factor * shares[1],
                      factor * shares[2]};
}

// Two efficiencies leave idle open: the usual one, or the nearest that keeps k1 and k2 from
// going below zero; method.md (6).
units::Result<LossShares> from_two(const std::vector<CurvePoint>& points, units::Power rating) {
    const auto [p, q] = std::pair{points[0].share, points[1].share};
    const auto [y, z] = std::pair{stated_loss_share(points[0]), stated_loss_share(points[1])};
    const double least = std::max(0.0, (q * y - p * z) / (q - p));  // below it k2 < 0
    const double most = (q * q * y - p * p * z) / (q * q - p * p);  // above it k1 < 0
    if (least > most) {
        return decided(points, std::nullopt, rating);
    }
    return decided(points, std::clamp(usual_idle_share, least, most), rating);
}

units::Result<LossShares> shares_from(const std::vector<CurvePoint>& points,
                                      std::optional<double> idle_share, units::Power rating) {
    if (points.empty()) {
        return nearest_not_negative(usual_curve, idle_share.value_or(usual_idle_share));
    }
    if (points.size() == 1) {
        return from_one(points.front(), idle_share, rating);
    }
    if (points.size() == 2 && !idle_share) {
        return from_two(points, rating);
    }
    return decided(points, idle_share, rating);
}

void note_what_was_taken(const Losses& losses, const std::vector<CurvePoint>& points,
                         bool idle_is_stated, scenario::Assumptions& assumed) {
    if (!idle_is_stated && points.size() < 3) {
        assumed.push_back({"inverter.idle",
                           said<"draws {idle} with nothing plugged in; such inverters draw from a "
                                "third to twice 1 % of their rating: measure it">(losses.idle),
                           practice()});
    }
    if (points.size() < 2) {
        assumed.push_back({"inverter.efficiency",
                           points.empty()
                               ? said<"0.91 at half and 0.88 at full continuous load, idle "
                                      "included">()
                               : said<"the shape of a usual curve through the one efficiency "
                                      "given">(),
                           practice()});
    }
    const LossShares shares{losses.idle / losses.rating, losses.linear, losses.quadratic};
    for (const CurvePoint& point : points) {
        const double fitted = point.share / (point.share + loss_share_at(shares, point.share));
        if (std::abs(fitted - point.efficiency) > rounding) {
            assumed.push_back(
                {"inverter.efficiency",
                 said<"the smooth curve gives {fitted} at {share}, where {stated} is stated">(
                     words::with_decimals(fitted, 3), percent(point.share),
                     words::Number{.value = point.efficiency}),
                 said<"{source}">("inverter/method.md (4)")});
        }
    }
}

}  // namespace

units::Power loss(const Losses& losses, units::ApparentPower apparent) {
    assert(apparent.amount() >= 0.0 * watt);
    const units::Power s = apparent.amount();
    return losses.idle + losses.linear * s + losses.quadratic * (s / losses.rating) * s;
}

units::Result<Losses> fit_losses(units::Power rating, std::optional<units::Power> idle,
                                 const std::vector<scenario::EfficiencyPoint>& stated,
                                 scenario::Assumptions& assumed) {
    assert(rating > 0.0 * watt);
    units::Errors errors = impossible_figures(rating, idle, stated);
    if (!errors.empty()) {
        return units::fail(std::move(errors));
    }
    const std::vector<CurvePoint> points = curve_of(stated);
    std::optional<double> idle_share;
    if (idle) {
        idle_share = *idle / rating;
    }
    const units::Result<LossShares> shares = shares_from(points, idle_share, rating);
    if (!shares) {
        return tl::unexpected(shares.error());
    }
    const Losses losses{.idle = idle.value_or((*shares)[0] * rating),
                        .linear = (*shares)[1],
                        .quadratic = (*shares)[2],
                        .rating = rating};
    note_what_was_taken(losses, points, idle.has_value(), assumed);
    return losses;
}

}  // namespace inverter
