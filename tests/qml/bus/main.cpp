// candlemark-touch as somebody meets it who does not see it: the real program on a display without
// a screen, listened to and used over the accessibility bus.
#include <QCoreApplication>
#include <gtest/gtest.h>

int main(int argc, char** argv) {
    const QCoreApplication application(argc, argv);
    testing::InitGoogleTest(&argc, argv);
    return RUN_ALL_TESTS();
}
