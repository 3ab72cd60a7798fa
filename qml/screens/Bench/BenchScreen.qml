import QtQuick
import Mountwright.Components
import Mountwright.Controls
import Mountwright.Theme
import Mountwright.ViewModels

// One step at a time, at arm's length.
CornerFrame {
    id: root

    required property BenchViewModel bench
    required property WatchViewModel watch
    required property OffTimeViewModel off

    readonly property bool isStep: bench.kind === BenchViewModel.Step
    readonly property bool isWaiting: bench.kind === BenchViewModel.Waiting
    readonly property bool isMissed: bench.kind === BenchViewModel.Missed
    readonly property bool isEmpty: bench.kind === BenchViewModel.NoJob || bench.kind === BenchViewModel.Trouble
    // Asked for; or, told already, to be put right where there is a place for the key.
    readonly property bool timeOff: isWaiting && (off.asked || (off.offered && !bench.look.present)) && !bench.canPutBack
    // Above the caution.
    readonly property double paneRoom: caution.y - (caution.visible ? Metrics.mm(2) : 0)
    idle: true
    doneFilled: isStep

    function done() {
        bench.forgetRefusal();
        stepDone();
    }
    function back() {
        if (bench.refusal !== "")
            bench.forgetRefusal();
        else
            bench.takeBack();
    }
    // What holds a blade or cannot wait is taken up by the first press; refused, the next press goes on.
    function pedalForward() {
        if (isMissed)
            bench.takeUpMissed();
        else if (bench.canBegin && bench.refusal === "")
            bench.begin();
        else
            done();
    }
    function noticed() {
        if (leftAlone.running)
            leftAlone.restart();
    }

    Timer {
        id: leftAlone
        interval: Touch.farAfter
        running: root.visible && root.bench.stepId !== ""
        onTriggered: root.asked("far")
    }

    keys: [
        TouchKey {
            objectName: "putBack"
            visible: root.bench.canPutBack
            width: Metrics.corner
            height: Metrics.benchKey
            legendSize: Metrics.label
            legend: qsTr("Put back")
            onActed: root.bench.putBack()
        },
        TouchKey {
            objectName: "begin"
            visible: root.bench.canBegin && !root.bench.canPutBack
            width: Metrics.corner
            height: Metrics.benchKey
            legend: qsTr("Begin")
            onActed: root.bench.begin()
        },
        TouchKey {
            objectName: "inTime"
            visible: root.isMissed && !root.bench.canPutBack
            width: Metrics.corner
            height: Metrics.benchKey
            legendSize: Metrics.label
            legend: qsTr("I did lay it in time")
            onActed: root.bench.wasBegunInTime()
        },
        TouchKey {
            objectName: "look"
            visible: root.bench.look.present && (!root.bench.look.doubted || root.isWaiting) && !root.bench.canBegin && !root.bench.canPutBack && !root.isMissed
            width: Metrics.corner
            height: Metrics.benchKey
            legend: qsTr("Test")
            onActed: root.asked("look")
        },
        TouchKey {
            objectName: "takeUp"
            visible: root.isMissed
            width: Metrics.corner
            height: Metrics.benchKey
            legendSize: Metrics.label
            legend: qsTr("Take it up")
            onActed: root.bench.takeUpMissed()
        },
        TouchKey {
            objectName: "number"
            visible: root.bench.figure.present
            width: Metrics.corner
            height: Metrics.benchKey
            legendSize: Metrics.label
            legend: qsTr("Number")
            hint: root.bench.figure.place
            onActed: root.asked("number")
        },
        TouchKey {
            objectName: "room"
            visible: root.isWaiting && !root.bench.canPutBack && !root.timeOff
            width: Metrics.corner
            height: Metrics.benchKey
            legend: qsTr("Room")
            onActed: root.asked("room")
        },
        TouchKey {
            objectName: "offTime"
            visible: root.timeOff
            width: Metrics.corner
            height: Metrics.benchKey
            legendSize: Metrics.label
            legend: qsTr("Time off")
            onActed: root.asked("off")
        },
        TouchKey {
            objectName: "more"
            visible: !root.isEmpty
            width: Metrics.corner
            height: Metrics.benchKey
            legend: qsTr("More")
            onActed: root.asked("more")
        },
        TouchKey {
            objectName: "jobs"
            visible: root.isEmpty
            width: Metrics.corner
            height: Metrics.benchKey
            legend: qsTr("Jobs")
            onActed: root.asked("jobs")
        },
        TouchKey {
            objectName: "desk"
            visible: root.bench.kind === BenchViewModel.NoJob
            width: Metrics.corner
            height: Metrics.benchKey
            legend: qsTr("Desk")
            onActed: root.asked("pieces")
        }
    ]

    PiecePane {
        id: piece
        visible: !root.isEmpty
        bench: root.bench
        watch: root.watch
        width: root.upright ? parent.width : parent.width * 0.34
        // Upright the step stands below it and needs its room first.
        height: root.upright ? Math.max(least, Math.min(root.paneRoom * 0.45, root.paneRoom - Metrics.mm(80))) : root.paneRoom
    }
    StepPane {
        id: step
        bench: root.bench
        x: piece.visible && !root.upright ? piece.width + Metrics.mm(6) : 0
        y: piece.visible && root.upright ? piece.height + Metrics.mm(4) : 0
        width: parent.width - x
        height: root.paneRoom - y
    }
    CautionBox {
        id: caution
        y: parent.height - height
        width: parent.width
        shown: root.bench.hasCaution
        textSize: root.upright ? Metrics.label : Metrics.text
        sign: root.bench.cautionSign
        word: root.bench.cautionWord
        hazard: root.bench.cautionHazard
        says: root.bench.cautionText
    }
}
