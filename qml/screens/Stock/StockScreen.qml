pragma ComponentBehavior: Bound

import QtQuick
import Mountwright.Components
import Mountwright.Controls
import Mountwright.Theme
import Mountwright.ViewModels

// The shop's materials: in stock, in jars with their dates, and as offcuts. A form on the right adds to them.
DeskFrame {
    id: root

    required property StockViewModel stock
    readonly property bool picked: stock.chosenTitle !== "" && !stock.formOpen

    place: "stock"

    // Enter and the pedal store the entry.
    function done() {
        form.keepAndGoOn();
    }
    function back() {
        if (stock.formOpen)
            form.stepBack();
        else
            leave();
    }

    doneAction.enabled: form.enters
    actions: [
        ScreenAction {
            name: "oneLess"
            text: qsTr("One taken")
            enabled: root.picked && root.stock.chosenCounted
            place: ScreenAction.Foot
            onTriggered: root.stock.oneLess()
        },
        ScreenAction {
            name: "oneMore"
            text: qsTr("One more")
            enabled: root.picked && root.stock.chosenCounted
            place: ScreenAction.Foot
            onTriggered: root.stock.oneMore()
        },
        ScreenAction {
            name: "correct"
            text: qsTr("Put right")
            enabled: root.picked && root.stock.chosenSort === StockViewModel.Item
            place: ScreenAction.Foot
            onTriggered: root.stock.correct()
        },
        ScreenAction {
            name: "appearance"
            text: qsTr("Its look")
            enabled: root.picked && root.stock.chosenLooks
            place: ScreenAction.Foot
            onTriggered: {
                root.stock.openAppearance();
                root.asked("appearance");
            }
        },
        ScreenAction {
            name: "gone"
            text: root.stock.chosenSort === StockViewModel.Batch ? qsTr("Used up") : root.stock.chosenSort === StockViewModel.Offcut ? qsTr("Gone") : qsTr("Take off the list")
            enabled: root.picked
            place: ScreenAction.Foot
            onTriggered: root.stock.gone()
        }
    ]

    Row {
        id: acts
        spacing: Metrics.deskGap

        StockKey {
            offers: ScreenAction {
                name: "enterStock"
                text: qsTr("Into stock")
                onTriggered: root.stock.enterStock()
            }
        }
        StockKey {
            offers: ScreenAction {
                name: "enterBatch"
                text: qsTr("A new batch")
                onTriggered: root.stock.enterBatch()
            }
        }
        StockKey {
            offers: ScreenAction {
                name: "takeBack"
                text: qsTr("Undo")
                enabled: root.stock.canTakeBack
                onTriggered: root.stock.takeBack()
            }
        }
    }
    ListView {
        id: list
        anchors.top: acts.bottom
        anchors.topMargin: Metrics.mm(3)
        anchors.bottom: parent.bottom
        width: parent.width * 0.54
        clip: true
        model: root.stock.rows
        spacing: Metrics.mm(1.5)
        boundsBehavior: Flickable.StopAtBounds

        delegate: StockLine {
            width: list.width
            onAsked: row => root.stock.choose(row)
        }
    }
    Words {
        anchors.top: list.top
        width: list.width
        visible: list.count === 0
        text: qsTr("Nothing is entered yet. What is entered here is counted against a piece while it is designed, and what is missing is said there. Offcuts come by themselves as sheets are cut up.")
        color: Theme.quiet
        font.pixelSize: Metrics.deskText
    }
    Item {
        anchors.left: list.right
        anchors.leftMargin: Metrics.mm(6)
        anchors.right: parent.right
        height: parent.height

        StockForm {
            id: form
            anchors.fill: parent
            visible: root.stock.formOpen
            stock: root.stock
        }
        StockChosen {
            anchors.fill: parent
            visible: !root.stock.formOpen
            stock: root.stock
            area: root
        }
    }
}
