import QtQuick
import QtQuick.Window
import Mountwright.Alert
import Mountwright.Components
import Mountwright.Controls
import Mountwright.Theme
import Mountwright.ViewModels

// The window: the screens one has come through, and the alert above them all.
Window {
    id: root

    required property Desk desk
    required property double dotsPerMm
    property bool lamp: desk.settings.lamp
    readonly property string shown: desk.alert.up ? "alert" : stack.screen
    // A separate property: its change signal fires only when the alert changes.
    readonly property string calling: desk.alert.identity
    readonly property ScreenBase answering: desk.alert.up ? alert : stack.current

    width: 1280
    height: 800
    color: Theme.paper
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
    // By pedal and keyboard.
    function noticed() {
        stack.current.noticed();
    }
    function done() {
        answering.ask(ScreenAction.Enter);
    }
    function pedalForward() {
        answering.ask(ScreenAction.Forward);
    }
    function pedalBack() {
        answering.ask(ScreenAction.Back);
    }
    function heard() {
        answering.ask(ScreenAction.Heard);
    }

    Stack {
        id: stack
        anchors.fill: parent
        visible: !root.desk.alert.up
        rows: screens.rows
    }
    AlertScreen {
        id: alert
        anchors.fill: parent
        visible: root.desk.alert.up
        alert: root.desk.alert
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
