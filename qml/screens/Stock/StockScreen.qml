pragma ComponentBehavior: Bound

import QtQuick
import Mountwright.Components
import Mountwright.Controls
import Mountwright.Forms
import Mountwright.Theme
import Mountwright.ViewModels

// What the shop has: in stock, in jars with their dates, and as offcuts. A form on the right takes in more of it.
DeskFrame {
    id: root

    required property StockViewModel stock

    place: "stock"

    component Act: TouchKey {
        width: Metrics.mm(36)
        height: Metrics.mm(13)
        legendSize: Metrics.deskText
    }

    function done() {
        if (stock.entering !== FormViewModel.Nothing)
            editor.keepAndGoOn();
    }
    function back() {
        if (stock.entering !== FormViewModel.Nothing)
            editor.stepBack();
        else if (stock.formOpen)
            stock.closeForm();
        else
            leave();
    }

    Row {
        id: acts
        spacing: Metrics.deskGap

        Act {
            objectName: "enterStock"
            legend: qsTr("Into stock")
            onActed: root.stock.enterStock()
        }
        Act {
            objectName: "enterBatch"
            legend: qsTr("A new batch")
            onActed: root.stock.enterBatch()
        }
        Act {
            objectName: "takeBack"
            visible: root.stock.canTakeBack
            legend: qsTr("Take back")
            onActed: root.stock.takeBack()
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

        delegate: Column {
            id: line

            required property int index
            required property string title
            required property string of
            required property string value
            required property string note
            required property string problem
            required property bool chosen

            width: list.width

            Words {
                width: line.width
                visible: line.of !== ""
                topPadding: Metrics.mm(1)
                bottomPadding: Metrics.mm(0.5)
                text: line.of
                color: Theme.quiet
                font.bold: true
                font.pixelSize: Metrics.deskLabel
            }
            TouchKey {
                id: key
                objectName: "stock" + line.index
                width: line.width
                height: Math.max(Metrics.deskKey, said.height + Metrics.mm(2))
                legend: ""
                called: line.title
                filled: line.chosen
                onActed: root.stock.choose(line.index)

                Column {
                    id: said
                    anchors.verticalCenter: parent.verticalCenter
                    x: Metrics.mm(2)
                    width: parent.width - amount.width - Metrics.mm(7)

                    Words {
                        width: said.width
                        text: line.title
                        color: key.hintInk
                        font.bold: true
                        font.pixelSize: Metrics.deskText
                    }
                    Words {
                        width: said.width
                        visible: text !== ""
                        text: line.problem !== "" ? line.problem : line.note
                        color: line.problem !== "" && !key.filled ? Theme.worked : key.hintInk
                        font.pixelSize: Metrics.deskLabel
                    }
                }
                Words {
                    id: amount
                    anchors.verticalCenter: parent.verticalCenter
                    anchors.right: parent.right
                    anchors.rightMargin: Metrics.mm(2)
                    text: line.value
                    color: key.hintInk
                    font.bold: true
                    font.pixelSize: Metrics.deskText
                    wrapMode: Text.NoWrap
                }
            }
        }
    }
    Words {
        anchors.top: list.top
        width: list.width
        visible: list.count === 0
        text: qsTr("Nothing is entered yet. What is entered here is counted against a piece while it is designed, and what lacks is said there. Offcuts come by themselves as sheets are cut up.")
        color: Theme.quiet
        font.pixelSize: Metrics.deskText
    }
    Item {
        id: side
        anchors.left: list.right
        anchors.leftMargin: Metrics.mm(6)
        anchors.right: parent.right
        height: parent.height

        Item {
            anchors.fill: parent
            visible: root.stock.formOpen

            FieldList {
                anchors.top: parent.top
                anchors.bottom: refused.top
                width: parent.width
                visible: root.stock.entering === FormViewModel.Nothing
                form: root.stock
            }
            FieldEditor {
                id: editor
                anchors.fill: parent
                visible: root.stock.formOpen && root.stock.entering !== FormViewModel.Nothing
                form: root.stock
            }
            Words {
                id: refused
                anchors.bottom: keys.top
                anchors.bottomMargin: Metrics.mm(2)
                width: parent.width
                visible: root.stock.entering === FormViewModel.Nothing
                text: root.stock.refusal
                color: Theme.worked
                font.bold: true
                font.pixelSize: Metrics.deskText
            }
            Row {
                id: keys
                anchors.bottom: parent.bottom
                visible: root.stock.entering === FormViewModel.Nothing
                spacing: Metrics.deskGap

                Act {
                    objectName: "closeForm"
                    legend: qsTr("Back")
                    onActed: root.stock.closeForm()
                }
                Act {
                    objectName: "keepForm"
                    legend: qsTr("Keep it")
                    filled: true
                    onActed: root.stock.keepForm()
                }
            }
        }
        Item {
            anchors.fill: parent
            visible: !root.stock.formOpen

            Column {
                width: parent.width
                spacing: Metrics.mm(2)

                Words {
                    width: parent.width
                    visible: text !== ""
                    text: root.stock.chosenTitle
                    font.bold: true
                    font.pixelSize: Metrics.deskTitle
                }
                Words {
                    width: parent.width
                    visible: text !== ""
                    text: root.stock.chosenSays
                    font.pixelSize: Metrics.deskText
                }
                Words {
                    width: parent.width
                    visible: text !== ""
                    text: root.stock.chosenWarning
                    color: Theme.worked
                    font.bold: true
                    font.pixelSize: Metrics.deskText
                }
                Words {
                    width: parent.width
                    visible: text !== ""
                    text: root.stock.refusal
                    color: Theme.worked
                    font.bold: true
                    font.pixelSize: Metrics.deskText
                }
            }
            Flow {
                anchors.bottom: parent.bottom
                width: parent.width
                spacing: Metrics.deskGap
                visible: root.stock.chosenTitle !== ""

                Act {
                    objectName: "oneLess"
                    visible: root.stock.chosenCounted
                    legend: qsTr("One taken")
                    onActed: root.stock.oneLess()
                }
                Act {
                    objectName: "oneMore"
                    visible: root.stock.chosenCounted
                    legend: qsTr("One more")
                    onActed: root.stock.oneMore()
                }
                Act {
                    objectName: "correct"
                    visible: root.stock.chosenSort === StockViewModel.Item
                    legend: qsTr("Put right")
                    onActed: root.stock.correct()
                }
                Act {
                    objectName: "gone"
                    legend: root.stock.chosenSort === StockViewModel.Batch ? qsTr("Used up") : root.stock.chosenSort === StockViewModel.Offcut ? qsTr("Gone") : qsTr("Kept no more")
                    onActed: root.stock.gone()
                }
            }
        }
    }
}
