// Work off the screen's thread. What has begun is let finish; of the requests that come meanwhile
// only the newest is kept, so the screen is fed while a finger keeps tapping.
#pragma once

#include <exception>
#include <functional>
#include <memory>
#include <optional>
#include <utility>

#include <QFutureWatcher>
#include <QString>
#include <QtConcurrent>

namespace touch {

template <class Result>
class LatestRun {
  public:
    using Job = std::function<Result()>;
    using Outcome = std::shared_ptr<const Result>;

    //   takes  done: called on the screen's thread with each result
    //          turned: called when work begins and when all of it is done
    //          faulted: called on the screen's thread where the work threw instead, with what it
    //                   said of it; a request that came meanwhile is begun all the same
    LatestRun(std::function<void(Outcome)> done, std::function<void()> turned,
              std::function<void(const QString& what)> faulted)
        : done_(std::move(done)), turned_(std::move(turned)), faulted_(std::move(faulted)) {
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
    struct End {
        Outcome outcome;  // null after a fault
        QString what;
    };

    void start(Job job) {
        running_ = true;
        watcher_.setFuture(QtConcurrent::run([job = std::move(job)]() -> End {
            try {
                return {std::make_shared<const Result>(job()), {}};
            } catch (const std::exception& fault) {
                return {nullptr, QString::fromUtf8(fault.what())};
            } catch (...) {
                return {nullptr, {}};
            }
        }));
    }
    void finished() {
        const End end = watcher_.result();
        running_ = false;
        if (end.outcome)
            done_(end.outcome);
        else if (!pending_)
            faulted_(end.what);
        if (pending_) {
            start(*std::exchange(pending_, std::nullopt));
        } else {
            turned_();
        }
    }

    std::function<void(Outcome)> done_;
    std::function<void()> turned_;
    std::function<void(const QString& what)> faulted_;
    QFutureWatcher<End> watcher_;
    std::optional<Job> pending_;
    bool running_ = false;
};

}  // namespace touch
