import QtQuick
import Mountwright.Components
import Mountwright.Controls
import Mountwright.Theme
import Mountwright.ViewModels

// A touch test: how it is done, and its answers in the wait's own words, each with its sign. A result far from the
// expected one is asked about once more.
CornerFrame {
    id: root

    required property LookViewModel look
    required property WatchViewModel watch

    // Where a word takes two lines its key has no room for a sign.
    function signOf(word: string, sign: string): string {
        return Metrics.keyLetters.advanceWidth(word) <= Metrics.corner - 2 * Metrics.keyMargin ? sign : "";
    }
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
            sign: root.signOf(text, "past")
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
            sign: root.signOf(text, root.look.doubted ? "" : root.look.window ? "within" : "risen")
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
            sign: root.signOf(text, root.look.window ? "before" : "rising")
            enabled: text !== "" && !root.look.doubted
            place: ScreenAction.AboveDone
            onTriggered: {
                root.look.notYet();
                root.answered();
            }
        }
    ]

    PageHead {
        id: head
        width: root.wordsRight - parent.x
        watch: root.watch
        piece: root.look.piece
        note: root.look.doubted ? qsTr("found early or late") : qsTr("touch test")
        title: root.look.title
    }
    Rectangle {
        objectName: "plate"
        x: -parent.x
        y: head.height + Metrics.mm(1.4)
        width: parent.x + parent.width + Metrics.mm(2)
        height: root.shelfTop - y
        color: Theme.cloth

        // Where on the piece it is tested.
        WetPiece {
            id: tested
            objectName: "tested"
            visible: !root.look.doubted && !root.upright
            x: Metrics.mm(4)
            y: Metrics.mm(3)
            width: Metrics.mm(62)
            height: parent.height - 2 * y
            drawing: root.look.drawing
            wet: root.look.wet
            says: root.look.state
        }
        Column {
            x: tested.visible ? tested.x + tested.width + Metrics.mm(5) : Metrics.mm(4)
            y: Metrics.mm(4)
            width: parent.width - x - Metrics.mm(3)
            spacing: Metrics.mm(4)

            Words {
                objectName: "test"
                width: parent.width
                text: root.look.test === "" ? qsTr("Touch it at the edge, out of sight.") : root.look.test
                font.pixelSize: Metrics.title
            }
            Words {
                objectName: "told"
                width: parent.width
                visible: text !== ""
                text: root.look.told
            }
            Words {
                width: parent.width
                text: root.look.doubted ? qsTr("It counts as found until you say that it was a slip. Times are learned from it once you say that it was so. Done and Back leave it open.") : qsTr("Go by touch; times are estimates.")
                color: Theme.quiet
                font.pixelSize: Metrics.label
            }
        }
    }
}
