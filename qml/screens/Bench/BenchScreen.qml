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
    required property MeanwhileViewModel meanwhile

    readonly property bool isStep: bench.kind === BenchViewModel.Step
    readonly property bool isWaiting: bench.kind === BenchViewModel.Waiting
    readonly property bool isMissed: bench.kind === BenchViewModel.Missed
    readonly property bool isEmpty: bench.kind === BenchViewModel.NoJob || bench.kind === BenchViewModel.Trouble
    // The off time is asked for; or it was answered and can be corrected where there is a place for the key.
    readonly property bool timeOff: isWaiting && (off.asked || (off.offered && !bench.look.present)) && !bench.canPutBack
    // A single number, or one after another, each in its dimension.
    readonly property bool numbered: isStep && bench.figure.present && !listed
    // The plate under the drawing, from below the head to above the caution.
    readonly property double plateTop: head.height + Metrics.mm(1.4)
    readonly property double plateEnd: caution.visible && !cautionLow ? caution.y - Metrics.mm(1.6) : shelfTop
    // While nothing dries a short caution stands in the shelf's place, and the number gets its room.
    readonly property double shelfX: Metrics.edge + Metrics.corner + Metrics.gap
    readonly property double shelfWidth: width - 2 * shelfX
    readonly property bool cautionLow: caution.shown && !upright && shelf.count === 0 && !shelf.silent && shelf.unknown === "" && caution.fitsIn(3, shelfWidth)
    // A single key beside the plate leaves the caution the whole width.
    readonly property bool cautionWide: caution.shown && !cautionLow && (upright || keysHeight <= Metrics.benchKey + 1)
    // Numbers that are gone through one by one in their place: of a card, or in rows. The pedal goes on to the next one,
    // and only after the last means Done.
    readonly property bool carded: isStep && bench.figure.hasCard
    readonly property bool sized: isStep && bench.figure.hasSizes
    readonly property bool listed: carded || sized
    readonly property bool atLast: bench.figure.stop + 1 >= bench.figure.stops
    // A key that goes before those of the number.
    readonly property bool before: bench.canPutBack || bench.canBegin || bench.look.present && !bench.look.doubted

    readonly property bool meanwhileShown: isWaiting && meanwhile.present

    idle: true
    shelfShown: !upright || !isWaiting || meanwhileShown
    shelfCovered: meanwhileShown
    // Six targets are the most: while the head takes presses and two keys stand beside the plate, the shelf takes none.
    shelfOpens: !isEmpty && !cautionLow && !(undo.visible && keysHeight > Metrics.benchKey + 1)
    // Nothing can be done while everything waits.
    doneAction.enabled: !isWaiting
    doneAction.filled: isStep && !bench.canBegin && (!listed || bench.figure.lastReached)
    keysEnd: cautionWide ? caution.y + Metrics.edge - Metrics.gap : keysFoot

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
            sign: "redo"
            enabled: root.bench.canPutBack
            place: ScreenAction.AboveDone
            onTriggered: root.bench.putBack()
        },
        // A step with a blade, or one that cannot wait, is begun by the pedal's first press; where that is refused, the
        // next press goes on.
        ScreenAction {
            name: "begin"
            filled: true
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
            sign: "test"
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
        // Strip lengths are read from the board at the other end of the bench.
        ScreenAction {
            name: "far"
            text: qsTr("Afar")
            sign: "afar"
            enabled: root.numbered && !root.before
            place: ScreenAction.AboveDone
            onTriggered: root.asked("far")
        },
        ScreenAction {
            name: "earlier"
            text: qsTr("Earlier")
            sign: "earlier"
            // Where another key goes before it there is room for Next alone, which begins anew after the last.
            enabled: root.carded && root.bench.figure.stop > 0 && !root.before
            place: ScreenAction.AboveDone
            onTriggered: root.bench.figure.earlier()
        },
        ScreenAction {
            name: "pedalEarlier"
            text: qsTr("The number before")
            enabled: root.listed && root.bench.figure.stop > 0 && !root.bench.canPutBack
            place: ScreenAction.NoKey
            by: ScreenAction.Back
            onTriggered: root.bench.figure.earlier()
        },
        ScreenAction {
            name: "nextNumber"
            text: root.listed && root.atLast ? qsTr("First") : qsTr("Next")
            sign: root.listed && root.atLast ? "" : "next"
            enabled: root.isStep && root.bench.figure.stops > 1 && !root.bench.canPutBack
            place: ScreenAction.AboveDone
            by: root.listed && !root.atLast && (!root.bench.canBegin || root.bench.refusal !== "") ? ScreenAction.Forward : ScreenAction.Nobody
            onTriggered: {
                if (!root.bench.figure.onward())
                    root.bench.figure.begin();
            }
        },
        // Where the shelf itself cannot be pressed.
        ScreenAction {
            name: "allWaits"
            text: qsTr("Waits")
            enabled: root.isWaiting && (root.meanwhileShown || !root.shelfShown) && !root.timeOff
            place: ScreenAction.AboveDone
            onTriggered: root.asked("waits")
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
            sign: "more"
            enabled: !root.isEmpty
            place: ScreenAction.TopCorner
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

    // The last act done is undone by a press anywhere in the head, for as long as its line there is raised.
    TouchKey {
        id: undo
        width: parent.width
        height: head.height
        legend: ""
        framed: false
        offers: ScreenAction {
            name: "undo"
            text: qsTr("Undo")
            enabled: root.bench.justDone && root.watch.troubles === ""
            onTriggered: {
                if (!rising.running)
                    root.bench.takeBack();
            }
        }
        onVisibleChanged: rising.restart()
    }
    // A press that was on its way when the line rose was meant for something else.
    Timer {
        id: rising
        interval: Touch.screenGuard
    }
    BenchHead {
        id: head
        // In the key it is print on the key.
        parent: undo.visible ? undo : undo.parent
        width: parent.width
        bench: root.bench
        watch: root.watch
    }
    Rectangle {
        objectName: "plate"
        x: -parent.x
        y: root.plateTop
        // The list beside a card lies on the ground.
        width: root.carded && !root.upright ? piece.width : parent.x + parent.width + Metrics.mm(2)
        height: root.plateEnd - y
        visible: !root.isEmpty
        color: Theme.cloth
    }
    WaitPane {
        objectName: "waits"
        visible: root.isWaiting
        y: root.plateTop + Metrics.mm(1)
        width: parent.width
        height: root.plateEnd - y - Metrics.mm(0.5)
        bench: root.bench
        shelf: root.shelf
    }
    FigurePlate {
        objectName: "figurePlate"
        visible: root.numbered
        y: root.plateTop + Metrics.mm(1.5)
        width: parent.width
        height: root.plateEnd - y - Metrics.mm(1)
        figure: root.bench.figure
        refusal: root.bench.refusal
        otherwise: root.bench.hasAct ? root.bench.act : root.bench.drawing
        checks: root.bench.checksText
        checksInShort: root.bench.checks.length > 0 ? qsTr("%1 to check: More").arg(root.bench.checks.length) : ""
        next: root.bench.afterwards
    }
    MeanwhileKey {
        visible: root.meanwhileShown
        x: root.shelfPlace.x - parent.x
        y: root.shelfPlace.y - parent.y
        width: root.shelfPlace.width
        height: root.shelfPlace.height
        meanwhile: root.meanwhile
        onTaken: root.meanwhile.take()
    }
    PiecePane {
        id: piece
        readonly property bool whole: acted || root.carded
        told: root.bench.parts.length > 0 ? 0 : step.toldHere
        visible: !root.isEmpty && !root.isWaiting && !root.sized && !root.numbered
        x: whole && !root.upright ? -parent.x : 0
        y: root.plateTop + (whole ? 0 : Metrics.mm(1.5))
        bench: root.bench
        width: root.upright ? parent.width : (root.carded ? 0.56 : acted ? 0.46 : 0.34) * parent.width
        // On an upright tablet the words are below it and get their room first.
        height: (root.upright ? Math.max(0, Math.min((root.plateEnd - root.plateTop) * (root.carded ? 0.55 : 0.36), root.plateEnd - root.plateTop - Metrics.mm(root.carded ? 38 : 44))) : root.plateEnd - root.plateTop) - (whole ? 0 : Metrics.mm(3))
    }
    StepPane {
        id: step
        visible: !root.isWaiting && !root.numbered
        bench: root.bench
        x: piece.visible && !root.upright ? piece.x + piece.width + Metrics.mm(root.carded ? 3 : 5) : 0
        y: root.upright && piece.visible ? piece.y + piece.height + Metrics.mm(2) : root.plateTop + Metrics.mm(1)
        width: parent.width - x
        height: root.plateEnd - y - Metrics.mm(1)
    }
    CautionBox {
        id: caution
        x: (root.cautionLow ? root.shelfX : Metrics.edge) - parent.x
        y: root.cautionLow ? root.height - Metrics.edge - parent.y - height : root.shelfTop - height
        width: root.cautionLow ? root.shelfWidth : root.cautionWide ? root.width - 2 * Metrics.edge : parent.width - x
        shown: root.bench.hasCaution
        low: root.carded
        sign: root.bench.cautionSign
        word: root.bench.cautionWord
        hazard: root.bench.cautionHazard
        says: root.bench.cautionText
    }
}
