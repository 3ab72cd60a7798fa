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
    // To where it was asked for.
    function back() {
        look.leave();
        leave();
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
            sign: "past"
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
            sign: root.look.doubted ? "" : "within"
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
            sign: "before"
            enabled: text !== "" && !root.look.doubted
            place: ScreenAction.AboveDone
            onTriggered: {
                root.look.notYet();
                root.answered();
            }
        }
    ]

    Column {
        id: said
        width: parent.width
        spacing: Metrics.mm(3)

        ArtworkName {
            width: parent.width
            visible: text !== ""
            text: root.look.piece
        }
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
            objectName: "times"
            width: parent.width
            visible: text !== ""
            text: root.look.times
            color: Theme.quiet
            font.pixelSize: Metrics.label
        }
        Words {
            width: parent.width
            text: root.look.doubted ? qsTr("It counts as found until you say that it was a slip. Times are learned from it once you say that it was so. Done and Back leave it open.") : qsTr("Go by touch; times are estimates.")
            color: Theme.quiet
            font.pixelSize: Metrics.label
        }
    }
    WetPiece {
        objectName: "tested"
        visible: height >= Metrics.mm(24)
        y: said.height + Metrics.mm(4)
        width: Math.min(parent.width, height * 1.4)
        height: root.shelfTop - y
        drawing: root.look.drawing
        wet: root.look.wet
        says: root.look.state
    }
}
