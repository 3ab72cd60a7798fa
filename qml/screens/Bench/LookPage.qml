import QtQuick
import Mountwright.Components
import Mountwright.Controls
import Mountwright.Theme
import Mountwright.ViewModels

// A touch test: how, and its answers.
CornerFrame {
    id: root

    required property LookViewModel look

    signal answered

    doneFilled: false
    keys: [
        TouchKey {
            objectName: "pastIt"
            visible: root.look.hasPastIt
            width: Metrics.corner
            height: Metrics.benchKey
            legend: qsTr("Past it")
            onActed: {
                root.look.pastIt();
                root.answered();
            }
        },
        TouchKey {
            objectName: "affirm"
            width: Metrics.corner
            height: Metrics.benchKey
            legend: root.look.affirm
            onActed: {
                root.look.ready();
                root.answered();
            }
        },
        TouchKey {
            objectName: "notYet"
            width: Metrics.corner
            height: Metrics.benchKey
            legendSize: Metrics.label
            legend: qsTr("Not yet")
            onActed: {
                root.look.notYet();
                root.answered();
            }
        }
    ]

    Column {
        width: parent.width
        spacing: Metrics.mm(5)

        Words {
            width: parent.width
            text: root.look.title
            font.bold: true
            font.pixelSize: Metrics.title
        }
        Words {
            width: parent.width
            text: root.look.test === "" ? qsTr("Touch it at the edge, out of sight.") : root.look.test
        }
        Words {
            width: parent.width
            text: qsTr("What the finger finds counts; the times are only likely.")
            color: Theme.quiet
            font.pixelSize: Metrics.label
        }
    }
}
