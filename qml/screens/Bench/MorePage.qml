import QtQuick
import Mountwright.Components
import Mountwright.Controls
import Mountwright.Theme
import Mountwright.ViewModels

// The step's second page: how, with the act drawn beside it; what good looks like, the trap, what is needed.
CornerFrame {
    id: root

    required property BenchViewModel bench
    required property WatchViewModel watch
    required property SettingsViewModel settings

    function done() {
        stepDone();
    }
    function paragraphs(): var {
        const all = [];
        for (const sentence of bench.sentences)
            all.push(sentence);
        if (bench.good !== "")
            all.push(qsTr("Good: %1").arg(bench.good));
        if (bench.trap !== "")
            all.push(qsTr("Trap: %1").arg(bench.trap));
        if (bench.tools.length > 0)
            all.push(qsTr("Lay out: %1.").arg(bench.tools.join("; ")));
        for (const check of bench.checks)
            all.push(qsTr("Check: %1").arg(check));
        if (all.length === 0)
            all.push(bench.detail);
        return all;
    }
    function turn() {
        pages.page = (pages.page + 1) % pages.pages;
    }

    actions: [
        ScreenAction {
            name: "faults"
            text: qsTr("Went wrong")
            enabled: root.bench.faults.length > 0
            place: ScreenAction.AboveDone
            onTriggered: root.asked("faults")
        },
        ScreenAction {
            name: "first"
            text: qsTr("One done")
            enabled: root.bench.first !== ""
            place: ScreenAction.AboveDone
            onTriggered: {
                root.bench.finishFirst();
                root.leave();
            }
        },
        ScreenAction {
            name: "room"
            text: qsTr("Room")
            enabled: root.bench.kind === BenchViewModel.Waiting
            place: ScreenAction.AboveDone
            onTriggered: root.asked("room")
        },
        ScreenAction {
            name: "jobs"
            text: qsTr("Jobs")
            // Four keys have room above Done.
            enabled: root.bench.first === "" || root.bench.faults.length === 0
            place: ScreenAction.AboveDone
            onTriggered: root.asked("jobs")
        },
        ScreenAction {
            name: "turn"
            text: qsTr("Page")
            hint: qsTr("%1 of %2").arg(pages.page + 1).arg(pages.pages)
            enabled: pages.pages > 1
            place: ScreenAction.AboveDone
            onTriggered: root.turn()
        },
        ScreenAction {
            name: "far"
            text: qsTr("From afar")
            enabled: pages.pages < 2
            place: ScreenAction.AboveDone
            onTriggered: root.asked("far")
        }
    ]

    PageHead {
        id: heading
        width: root.wordsRight - parent.x
        watch: root.watch
        piece: root.bench.shortPiece
        note: root.bench.thing
        title: root.bench.title
        titleSize: Metrics.title
    }
    PagedText {
        id: pages
        anchors.top: heading.bottom
        anchors.topMargin: Metrics.mm(2) + (act.above ? act.height + Metrics.mm(2) : 0)
        anchors.bottom: parent.bottom
        anchors.bottomMargin: marking.visible && !root.bench.hasAct ? marking.height + Metrics.mm(2) : 0
        width: parent.width
        beside: root.bench.hasAct && !act.above ? act.width + Metrics.mm(5) : 0
        besideHeight: beside > 0 ? (root.bench.figure.byMarking ? height : act.height) : 0
        paragraphs: root.paragraphs()
        numbered: root.bench.parts.length > 0 ? 0 : root.bench.sentences.length
    }
    PieceView {
        id: act
        // On an upright tablet the words have no room beside the drawing.
        readonly property bool above: root.bench.hasAct && root.upright

        objectName: "act"
        visible: root.bench.hasAct && (above || pages.page === 0)
        anchors.top: heading.bottom
        anchors.topMargin: Metrics.mm(2)
        x: above && root.bench.figure.byMarking ? 0 : parent.width - width
        // It leaves room for the words where a key stands below it, and for the key where that stands beside it.
        width: Metrics.mm(root.bench.figure.byMarking ? 54 : 76)
        height: width * 51 / 76
        drawing: root.bench.act
        numbered: root.bench.parts.length > 0 ? 0 : root.bench.sentences.length
    }
    // Another way of marking a window has other numbers, so that the bench is where it is to be seen.
    BenchKey {
        id: marking
        x: parent.width - width
        y: (act.above ? act.y + act.height : parent.height) - height
        visible: root.bench.figure.byMarking && (act.above || pages.page === 0)
        offers: ScreenAction {
            name: "turnMarking"
            text: root.settings.byBorders ? qsTr("By marks") : qsTr("By borders")
            enabled: root.bench.figure.byMarking
            onTriggered: {
                root.settings.turnMarking();
                root.over();
            }
        }
    }
}
