// Work off the screen's thread. What has begun is let finish; of the requests that come meanwhile
// only the newest is kept, so the screen is fed while a finger keeps tapping.
#pragma once

#include <functional>
#include <memory>
#include <optional>
#include <utility>

#include <QFutureWatcher>
#include <QtConcurrent>

namespace touch {

template <class Result>
class LatestRun {
  public:
    using Job = std::function<Result()>;
    using Outcome = std::shared_ptr<const Result>;

    //   takes  done: called on the screen's thread with each result
    //          turned: called when work begins and when all of it is done
    explicit LatestRun(
        std::function<void(Outcome)> done, std::function<void()> turned = [] {})
        : done_(std::move(done)), turned_(std::move(turned)) {
        QObject::connect(&watcher_, &QFutureWatcherBase::finished, &watcher_,
                         [this] { finished(); });
    }
    LatestRun(const LatestRun&) = delete;
    LatestRun& operator=(const LatestRun&) = delete;
    ~LatestRun() {
        watcher_.disconnect();
        watcher_.cancel();
        watcher_.waitForFinished();
    }

    void request(Job job) {
        if (running_) {
            pending_ = std::move(job);
            return;
        }
        start(std::move(job));
        turned_();
    }
    // What waits is given up; what runs is let finish.
    void forget() { pending_.reset(); }
    [[nodiscard]] bool running() const { return running_; }
    // Another request came after the one that is running or has just been delivered.
    [[nodiscard]] bool has_newer() const { return pending_.has_value(); }

  private:
    void start(Job job) {
        running_ = true;
        watcher_.setFuture(QtConcurrent::run(
            [job = std::move(job)]() -> Outcome { return std::make_shared<const Result>(job()); }));
    }
    void finished() {
        const Outcome outcome = watcher_.result();
        running_ = false;
        done_(outcome);
        if (pending_) {
            start(*std::exchange(pending_, std::nullopt));
        } else {
            turned_();
        }
    }

    std::function<void(Outcome)> done_;
    std::function<void()> turned_;
    QFutureWatcher<Outcome> watcher_;
    std::optional<Job> pending_;
    bool running_ = false;
};

}  // namespace touch
