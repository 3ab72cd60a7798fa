import QtQuick
import QtQuick.Window
import Mountwright.Components
import Mountwright.Controls
import Mountwright.Theme
import Mountwright.ViewModels

// The window: the stack of screens, and the alert above them all.
Window {
    id: root

    required property Desk desk
    required property double dotsPerMm
    property bool lamp: desk.settings.lamp
    readonly property string shown: desk.alert.up ? "alert" : stack.screen
    // A separate property: its change signal fires only when the alert changes.
    readonly property string calling: desk.alert.identity
    readonly property ScreenBase answering: desk.alert.up ? alert.item as ScreenBase : stack.current
    // True once the first frame is shown: the parts that are kept ready beside it are created then.
    property bool begun: false

    width: 1280
    height: 800
    color: Theme.ground
    title: qsTr("Mountwright")

    onShownChanged: Touch.guard()
    onCallingChanged: Touch.guard()
    onLampChanged: Theme.lamp = lamp
    onDotsPerMmChanged: Metrics.dotsPerMm = dotsPerMm
    Component.onCompleted: {
        Metrics.dotsPerMm = dotsPerMm;
        Theme.lamp = lamp;
        ways.begin();
    }

    function open(screen: string) {
        stack.open(screen);
    }
    // These are called for pedal and keyboard.
    function noticed() {
        stack.current.noticed();
    }
    // `by` is "Enter", "Forward", "Back" or "Heard".
    function asked(by: string) {
        answering.ask(ScreenAction[by]);
    }

    Binding {
        target: Shop
        property: "appearances"
        value: root.desk.appearances.all
    }
    Stack {
        id: stack
        anchors.fill: parent
        visible: !root.desk.alert.up
        rows: screens.rows
    }
    Loader {
        id: alert
        anchors.fill: parent
        active: root.begun || root.desk.alert.up
        visible: root.desk.alert.up
        Component.onCompleted: setSource("qrc:/qt/qml/Mountwright/Alert/AlertScreen.qml", {
            "alert": root.desk.alert
        })
    }
    Connections {
        target: root
        enabled: !root.begun
        function onFrameSwapped() {
            root.begun = true;
        }
    }
    Screens {
        id: screens
        desk: root.desk
    }
    Ways {
        id: ways
        desk: root.desk
        stack: stack
    }
}
