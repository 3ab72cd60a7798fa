pragma ComponentBehavior: Bound

import QtQuick
import Mountwright.Components
import Mountwright.Controls
import Mountwright.Theme
import Mountwright.ViewModels

// What went wrong, a few at a time; choosing one shows how it is mended.
CornerFrame {
    id: root

    required property BenchViewModel bench
    property int first: 0
    readonly property int atOnce: 3

    function done() {
        stepDone();
    }

    doneFilled: false
    keys: TouchKey {
        objectName: "others"
        visible: root.bench.faults.length > root.atOnce
        width: Metrics.corner
        height: Metrics.benchKey
        legend: qsTr("Others")
        onActed: root.first = root.first + root.atOnce < root.bench.faults.length ? root.first + root.atOnce : 0
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
                required property int index

                objectName: "fault" + index
                width: parent.width
                height: Metrics.key
                legend: root.bench.faults[root.first + index] ?? ""
                legendSize: Metrics.text
                onActed: {
                    root.bench.report(root.first + index);
                    if (root.bench.mend !== "" || root.bench.wayKeys.length > 0)
                        root.asked("mend");
                }
            }
        }
    }
}
