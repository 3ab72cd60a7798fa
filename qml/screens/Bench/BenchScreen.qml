import QtQuick
import Mountwright.Components
import Mountwright.Controls
import Mountwright.Theme
import Mountwright.ViewModels

// One act at a time, at arm's length.
CornerFrame {
    id: root

    required property BenchViewModel bench
    required property WatchViewModel watch
    required property OffTimeViewModel off

    readonly property bool isStep: bench.kind === BenchViewModel.Step
    readonly property bool isWaiting: bench.kind === BenchViewModel.Waiting
    readonly property bool isMissed: bench.kind === BenchViewModel.Missed
    readonly property bool isEmpty: bench.kind === BenchViewModel.NoJob || bench.kind === BenchViewModel.Trouble
    // The off time is asked for; or it was answered and can be corrected where there is a place for the key.
    readonly property bool timeOff: isWaiting && (off.asked || (off.offered && !bench.look.present)) && !bench.canPutBack
    // The room above the caution.
    readonly property double paneTop: head.height + Metrics.mm(1)
    readonly property double paneRoom: caution.y - (caution.visible ? Metrics.mm(2) : 0) - paneTop
    idle: true
    doneAction.filled: isStep

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

    actions: [
        ScreenAction {
            name: "putBack"
            text: qsTr("Redo")
            enabled: root.bench.canPutBack
            place: ScreenAction.AboveDone
            onTriggered: root.bench.putBack()
        },
        // A step with a blade, or one that cannot wait, is begun by the pedal's first press; where that is refused, the
        // next press goes on.
        ScreenAction {
            name: "begin"
            text: qsTr("Begin")
            enabled: root.bench.canBegin && !root.bench.canPutBack
            place: ScreenAction.AboveDone
            by: root.bench.refusal === "" ? ScreenAction.Forward : ScreenAction.Nobody
            onTriggered: root.bench.begin()
        },
        ScreenAction {
            name: "inTime"
            text: qsTr("Laid in time")
            enabled: root.isMissed && !root.bench.canPutBack
            place: ScreenAction.AboveDone
            onTriggered: root.bench.wasBegunInTime()
        },
        ScreenAction {
            name: "look"
            text: qsTr("Test")
            enabled: root.bench.look.present && (!root.bench.look.doubted || root.isWaiting) && !root.bench.canBegin && !root.bench.canPutBack && !root.isMissed
            place: ScreenAction.AboveDone
            onTriggered: root.asked("look")
        },
        ScreenAction {
            name: "takeUp"
            text: qsTr("Take it up")
            enabled: root.isMissed
            place: ScreenAction.AboveDone
            by: ScreenAction.Forward
            onTriggered: root.bench.takeUpMissed()
        },
        ScreenAction {
            name: "number"
            text: qsTr("Number")
            hint: root.bench.figure.place
            enabled: root.bench.figure.present && !root.bench.figure.hasCard
            place: ScreenAction.AboveDone
            onTriggered: root.asked("number")
        },
        ScreenAction {
            name: "card"
            text: qsTr("Card")
            hint: root.bench.figure.place
            enabled: root.bench.figure.present && root.bench.figure.hasCard
            place: ScreenAction.AboveDone
            onTriggered: root.asked("card")
        },
        ScreenAction {
            name: "room"
            text: qsTr("Room")
            enabled: root.isWaiting && !root.bench.canPutBack && !root.timeOff
            place: ScreenAction.AboveDone
            onTriggered: root.asked("room")
        },
        ScreenAction {
            name: "offTime"
            text: qsTr("Time off")
            enabled: root.timeOff
            place: ScreenAction.AboveDone
            onTriggered: root.asked("off")
        },
        ScreenAction {
            name: "more"
            text: qsTr("More")
            enabled: !root.isEmpty
            place: ScreenAction.AboveDone
            onTriggered: root.asked("more")
        },
        ScreenAction {
            name: "jobs"
            text: qsTr("Jobs")
            enabled: root.isEmpty
            place: ScreenAction.AboveDone
            onTriggered: root.asked("jobs")
        },
        ScreenAction {
            name: "desk"
            text: qsTr("Desk")
            enabled: root.bench.kind === BenchViewModel.NoJob
            place: ScreenAction.AboveDone
            onTriggered: root.asked("pieces")
        }
    ]

    BenchHead {
        id: head
        width: parent.width
        bench: root.bench
        watch: root.watch
    }
    PiecePane {
        id: piece
        visible: !root.isEmpty
        y: root.paneTop
        bench: root.bench
        // A card is read where it stands.
        width: root.upright ? parent.width : parent.width * (carded ? 0.5 : 0.34)
        // On an upright tablet the step is below it and gets its room first.
        height: root.upright ? Math.max(least, Math.min(root.paneRoom * 0.45, root.paneRoom - Metrics.mm(98))) : root.paneRoom
    }
    StepPane {
        id: step
        bench: root.bench
        x: piece.visible && !root.upright ? piece.width + Metrics.mm(6) : 0
        y: root.paneTop + (piece.visible && root.upright ? piece.height + Metrics.mm(4) : 0)
        width: parent.width - x
        height: root.paneTop + root.paneRoom - y
    }
    CautionBox {
        id: caution
        y: parent.height - height
        width: parent.width
        shown: root.bench.hasCaution
        // More than a glance takes in is told in smaller letters, and so is a caution beside a trouble with the alerts.
        textSize: root.upright || root.watch.troubles !== "" || root.bench.cautionText.length > 70 ? Metrics.label : Metrics.text
        sign: root.bench.cautionSign
        word: root.bench.cautionWord
        hazard: root.bench.cautionHazard
        says: root.bench.cautionText
    }
}
