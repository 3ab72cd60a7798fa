import QtQuick
import QtQuick.Window
import Mountwright.Alert
import Mountwright.Components
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
        Metrics.distance = desk.settings.distance;
        if (!desk.settings.introduced && desk.pieces.all === 0 && desk.bench.kind !== BenchViewModel.Trouble)
            open("welcome");
        askOffTime();
    }

    function open(screen: string) {
        stack.open(screen);
    }
    function askOffTime() {
        if (stack.current.idle && desk.off.asked && !desk.off.putOff)
            open("off");
    }
    // Measures first, then checks; then the step is done.
    function stepDone() {
        const isStep = desk.bench.kind === BenchViewModel.Step;
        if (isStep && desk.made.total > 0 && shown !== "made" && shown !== "checks") {
            open("made");
        } else if (isStep && desk.bench.checks.length > 0 && shown !== "checks") {
            open("checks");
        } else {
            desk.bench.finish();
            open("bench");
        }
    }
    // By pedal and keyboard.
    function noticed() {
        stack.current.noticed();
    }
    function done() {
        stack.current.done();
    }
    function pedalForward() {
        if (!desk.alert.up)
            stack.current.pedalForward();
    }
    function pedalBack() {
        if (!desk.alert.up)
            stack.current.pedalBack();
    }
    function heard() {
        if (desk.alert.up)
            desk.alert.hear();
    }

    Stack {
        id: stack
        anchors.fill: parent
        visible: !root.desk.alert.up
        rows: screens.rows
    }
    AlertScreen {
        anchors.fill: parent
        visible: root.desk.alert.up
        alert: root.desk.alert
    }
    Screens {
        id: screens
        desk: root.desk
    }
    Connections {
        target: stack.current
        function onAsked(screen) {
            root.open(screen);
        }
        function onLeave() {
            stack.leave();
        }
        function onOver() {
            root.open("bench");
        }
        function onStepDone() {
            root.stepDone();
        }
    }
    Connections {
        target: root.desk.settings
        function onChanged() {
            Metrics.distance = root.desk.settings.distance;
        }
    }
    Connections {
        target: root.desk.alert
        function onAnswered() {
            if (stack.current.idle)
                root.open(root.desk.bench.look.doubted ? "look" : "bench");
        }
    }
    Connections {
        target: root.desk.off
        function onChanged() {
            root.askOffTime();
        }
    }
}
