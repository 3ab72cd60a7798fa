pragma ComponentBehavior: Bound

import QtQuick
import Mountwright.Components
import Mountwright.Controls
import Mountwright.Theme
import Mountwright.ViewModels

// The step's possible faults, as many at a time as have room; choosing one shows how it is mended.
CornerFrame {
    id: root

    required property BenchViewModel bench
    required property WatchViewModel watch
    property int first: 0
    readonly property int atOnce: Math.max(1, Math.min(3, Math.floor((shelfTop - plate.y - Metrics.mm(2) + Metrics.gap) / (Metrics.key + Metrics.gap))))

    function done() {
        stepDone();
    }

    doneAction.filled: false
    actions: ScreenAction {
        name: "others"
        text: qsTr("Others")
        hint: qsTr("%1 of %2").arg(Math.floor(root.first / root.atOnce) + 1).arg(Math.ceil(root.bench.faults.length / root.atOnce))
        enabled: root.bench.faults.length > root.atOnce
        place: ScreenAction.AboveDone
        onTriggered: root.first = root.first + root.atOnce < root.bench.faults.length ? root.first + root.atOnce : 0
    }

    PageHead {
        id: head
        width: root.wordsRight - parent.x
        watch: root.watch
        piece: root.bench.shortPiece
        note: qsTr("went wrong")
        title: qsTr("What do you see?")
        where: root.bench.refusal
    }
    Rectangle {
        id: plate
        objectName: "plate"
        x: -parent.x
        y: head.height + Metrics.mm(1.4)
        width: parent.x + parent.width + Metrics.mm(2)
        height: root.shelfTop - y
        color: Theme.cloth
    }
    Column {
        y: plate.y + Metrics.mm(2)
        width: parent.width
        spacing: Metrics.gap

        Repeater {
            model: Math.max(0, Math.min(root.atOnce, root.bench.faults.length - root.first))

            TouchKey {
                id: fault

                required property int index

                width: parent.width - Metrics.mm(2)
                height: Metrics.key
                legendSize: legend.length > 48 ? Metrics.label : Metrics.text
                offers: ScreenAction {
                    name: "fault" + fault.index
                    text: root.bench.faults[root.first + fault.index] ?? ""
                    onTriggered: {
                        root.bench.report(root.first + fault.index);
                        if (root.bench.mend !== "" || root.bench.wayKeys.length > 0)
                            root.asked("mend");
                    }
                }
            }
        }
    }
}
