#include "models/file/no_network.hpp"

#include <QNetworkAccessManager>
#include <QNetworkRequest>
#include <QQmlAbstractUrlInterceptor>
#include <QQmlEngine>
#include <QQmlNetworkAccessManagerFactory>

namespace touch {

namespace {

bool lies_in_the_program(const QUrl& url) {
    return url.scheme() == QStringLiteral("qrc");
}

bool lies_here(const QUrl& url) {
    return url.isRelative() || lies_in_the_program(url) ||
           (url.isLocalFile() && url.host().isEmpty());
}

// Answers every request for something else with an error, without looking up its host.
class Refusing : public QNetworkAccessManager {
  public:
    using QNetworkAccessManager::QNetworkAccessManager;

  protected:
    QNetworkReply* createRequest(Operation operation, const QNetworkRequest& request,
                                 QIODevice* outgoing) override {
        if (lies_in_the_program(request.url()))
            return QNetworkAccessManager::createRequest(operation, request, outgoing);
        return QNetworkAccessManager::createRequest(
            GetOperation, QNetworkRequest(QUrl(QStringLiteral("refused:"))), nullptr);
    }
};

class RefusingFactory : public QQmlNetworkAccessManagerFactory {
  public:
    QNetworkAccessManager* create(QObject* parent) override { return new Refusing(parent); }
};

class OnlyFromHere : public QQmlAbstractUrlInterceptor {
  public:
    QUrl intercept(const QUrl& url, DataType) override { return lies_here(url) ? url : QUrl(); }
};

}  // namespace

void keep_off_the_network(QQmlEngine& engine) {
    static RefusingFactory refusing;
    static OnlyFromHere only_from_here;
    engine.setNetworkAccessManagerFactory(&refusing);
    engine.addUrlInterceptor(&only_from_here);
}

}  // namespace touch
