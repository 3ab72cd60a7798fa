import QtQuick
import Mountwright.Components
import Mountwright.Controls
import Mountwright.Theme
import Mountwright.ViewModels

// A touch test: how, and its answers. What was found far from what was expected is asked about once more.
CornerFrame {
    id: root

    required property LookViewModel look

    // What was found is asked about at once where it is far from what was expected.
    function answered() {
        if (!look.doubted)
            over();
    }
    function done() {
        look.leave();
        over();
    }
    function back() {
        done();
    }

    doneFilled: false
    keys: [
        TouchKey {
            objectName: "slip"
            visible: root.look.doubted
            width: Metrics.corner
            height: Metrics.benchKey
            legendSize: Metrics.label
            legend: qsTr("No, a slip")
            onActed: {
                root.look.deny();
                root.answered();
            }
        },
        TouchKey {
            objectName: "pastIt"
            visible: legend !== "" && !root.look.doubted
            width: Metrics.corner
            height: Metrics.benchKey
            legendSize: Metrics.keyText(legend)
            legend: root.look.pastItWord
            onActed: {
                root.look.pastIt();
                root.answered();
            }
        },
        TouchKey {
            objectName: "affirm"
            width: Metrics.corner
            height: Metrics.benchKey
            legendSize: Metrics.keyText(legend)
            legend: root.look.doubted ? qsTr("It was so") : root.look.foundWord
            onActed: {
                if (root.look.doubted)
                    root.look.confirm();
                else
                    root.look.ready();
                root.answered();
            }
        },
        TouchKey {
            objectName: "notYet"
            width: Metrics.corner
            height: Metrics.benchKey
            visible: legend !== "" && !root.look.doubted
            legendSize: Metrics.keyText(legend)
            legend: root.look.notYetWord
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
            text: root.look.doubted ? qsTr("It counts as found until you say that it was a slip. Times are learned from it once you say that it was so. Done and Back leave it open.") : qsTr("Go by touch; times are estimates.")
            color: Theme.quiet
            font.pixelSize: Metrics.label
        }
    }
}
