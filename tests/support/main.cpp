// Runs the tests of a program without a window. Translation and resources need an application object.
#include <gtest/gtest.h>

#include <QCoreApplication>

int main(int argc, char **argv)
{
    testing::InitGoogleTest(&argc, argv);
    const QCoreApplication application(argc, argv);
    return RUN_ALL_TESTS();
}
