pragma Singleton
import QtQuick

// Puts work off until the present bindings have been evaluated; a function asked for twice runs once.
QtObject {
    function call(act: var) {
        // Qt 6.4 declares it as a value, so the linter calls every use of it improper.
        Qt.callLater(act); // qmllint disable
    }
}
