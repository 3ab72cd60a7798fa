pragma ComponentBehavior: Bound

import QtQuick
import Mountwright.Components
import Mountwright.Controls
import Mountwright.Theme
import Mountwright.ViewModels

// The step's possible faults, a few at a time; choosing one shows how it is mended.
CornerFrame {
    id: root

    required property BenchViewModel bench
    property int first: 0
    // On a small tablet fewer have room above the corners.
    readonly property int atOnce: Math.max(1, Math.min(3, Math.floor((shelfTop - heading.height - Metrics.mm(3) + Metrics.gap) / (Metrics.key + Metrics.gap))))

    function done() {
        stepDone();
    }

    doneAction.filled: false
    actions: ScreenAction {
        name: "others"
        text: qsTr("Others")
        enabled: root.bench.faults.length > root.atOnce
        place: ScreenAction.AboveDone
        onTriggered: root.first = root.first + root.atOnce < root.bench.faults.length ? root.first + root.atOnce : 0
    }

    Words {
        id: heading
        width: parent.width
        text: qsTr("What do you see?")
        font.bold: true
    }
    Column {
        y: heading.height + Metrics.mm(3)
        width: parent.width
        spacing: Metrics.gap

        Repeater {
            model: Math.min(root.atOnce, root.bench.faults.length - root.first)

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
