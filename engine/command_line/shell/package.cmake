# cpack makes candlemark_VERSION_ARCHITECTURE.deb of what is installed.
set(CPACK_GENERATOR DEB)
set(CPACK_PACKAGE_NAME candlemark)
set(CPACK_PACKAGE_VENDOR "The Candlemark authors")
set(CPACK_PACKAGE_CONTACT "The Candlemark authors <candlemark@localhost>")
set(CPACK_PACKAGING_INSTALL_PREFIX /usr)
set(CPACK_STRIP_FILES ON)
set(CPACK_DEBIAN_FILE_NAME DEB-DEFAULT)
set(CPACK_DEBIAN_PACKAGE_SECTION utils)
set(CPACK_PACKAGE_DESCRIPTION_SUMMARY "planner for hand-built emergency power units")
set(CPACK_DEBIAN_PACKAGE_DESCRIPTION
"Tells how long a battery in a case, with an inverter, fused circuits,
packs that plug in and a few panels, lasts through an outage; whether
motors start, packs may be joined, fuses and wires suit; what a voltmeter
reading means; and prints a card for the lid. It is arithmetic, not
approval.")
# Libraries are found by what the programs are linked with.
set(CPACK_DEBIAN_PACKAGE_SHLIBDEPS ON)
if(CANDLEMARK_TOUCH)
    # The modules that the screens import are loaded by name when they are shown: nobody finds those
    # but by reading the import lines. The first line is what those modules need of each other and do
    # not say; then the icon's format and letters to write with.
    string(JOIN ", " CPACK_DEBIAN_PACKAGE_DEPENDS
        qml6-module-qtqml qml6-module-qtqml-models qml6-module-qtqml-workerscript qml6-module-qtquick-templates
        qml6-module-qtquick qml6-module-qtquick-controls qml6-module-qtquick-layouts qml6-module-qtquick-window
        qml6-module-qtquick-dialogs qml6-module-qtquick-shapes qml6-module-qtcharts qml6-module-qtcore
        qml6-module-qt-labs-folderlistmodel
        "qt6-svg-plugins | libqt6svg6 (<< 6.5)" fonts-dejavu-core)
endif()
include(CPack)
