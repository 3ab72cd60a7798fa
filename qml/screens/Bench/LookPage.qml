import QtQuick
import Mountwright.Components
import Mountwright.Controls
import Mountwright.Theme
import Mountwright.ViewModels

// A touch test: the method and its answers. A result far from the expected one is asked about once more.
CornerFrame {
    id: root

    required property LookViewModel look

    // A result far from the expected one is asked about at once.
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

    doneAction.filled: false
    actions: [
        ScreenAction {
            name: "slip"
            text: qsTr("No, a slip")
            enabled: root.look.doubted
            place: ScreenAction.AboveDone
            onTriggered: {
                root.look.deny();
                root.answered();
            }
        },
        ScreenAction {
            name: "pastIt"
            text: root.look.pastItWord
            enabled: text !== "" && !root.look.doubted
            place: ScreenAction.AboveDone
            onTriggered: {
                root.look.pastIt();
                root.answered();
            }
        },
        ScreenAction {
            name: "affirm"
            text: root.look.doubted ? qsTr("It was so") : root.look.foundWord
            place: ScreenAction.AboveDone
            onTriggered: {
                if (root.look.doubted)
                    root.look.confirm();
                else
                    root.look.ready();
                root.answered();
            }
        },
        ScreenAction {
            name: "notYet"
            text: root.look.notYetWord
            enabled: text !== "" && !root.look.doubted
            place: ScreenAction.AboveDone
            onTriggered: {
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
