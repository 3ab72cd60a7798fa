import QtQuick
import Mountwright.Components
import Mountwright.Controls
import Mountwright.Theme
import Mountwright.ViewModels

// One piece at the desk: its picture, where it stands, and all that can be done with it.
DeskFrame {
    id: root

    required property PiecesModel pieces
    required property RenewalViewModel renewal
    required property DesignViewModel design

    place: ""

    component Act: TouchKey {
        width: Metrics.mm(44)
        height: Metrics.mm(14)
        legendSize: Metrics.deskText
    }

    PieceView {
        id: picture
        width: parent.width * 0.52
        height: parent.height
        drawing: root.pieces.chosenPicture
    }
    Column {
        anchors.left: picture.right
        anchors.leftMargin: Metrics.mm(6)
        anchors.right: parent.right
        spacing: Metrics.mm(2)

        Words {
            width: parent.width
            text: root.pieces.chosenTitle
            font.bold: true
            font.pixelSize: Metrics.deskTitle
        }
        Words {
            width: parent.width
            visible: text !== ""
            text: root.pieces.chosenOf
            color: Theme.quiet
            font.pixelSize: Metrics.deskText
        }
        Words {
            width: parent.width
            text: root.pieces.chosenWhere
            font.pixelSize: Metrics.deskText
        }
        Words {
            width: parent.width
            visible: text !== ""
            text: root.pieces.chosenRuns
            color: Theme.calm
            font.pixelSize: Metrics.deskText
        }
        Words {
            width: parent.width
            visible: text !== ""
            text: root.pieces.chosenDue
            color: Theme.quiet
            font.pixelSize: Metrics.deskText
        }
        Words {
            width: parent.width
            visible: text !== ""
            text: root.pieces.said
            color: root.pieces.refused ? Theme.worked : Theme.calm
            font.bold: true
            font.pixelSize: Metrics.deskText
        }
    }
    Flow {
        anchors.left: picture.right
        anchors.leftMargin: Metrics.mm(6)
        anchors.right: parent.right
        anchors.bottom: parent.bottom
        spacing: Metrics.deskGap

        Act {
            objectName: "goOn"
            legend: root.pieces.chosenDesign ? qsTr("Go on designing") : qsTr("To the bench")
            filled: true
            onActed: {
                if (!root.pieces.chosenDesign)
                    root.over();
                else if (root.design.openDesign(root.pieces.chosenId))
                    root.asked("design");
            }
        }
        Act {
            objectName: "again"
            legend: qsTr("For another picture")
            onActed: {
                if (root.design.beginAgain(root.pieces.chosenId))
                    root.asked("design");
            }
        }
        Act {
            objectName: "record"
            visible: !root.pieces.chosenDesign
            legend: qsTr("Record and care")
            onActed: root.asked("record")
        }
        Act {
            objectName: "cutting"
            visible: !root.pieces.chosenDesign
            legend: qsTr("Cut sheets")
            onActed: root.asked("cutting")
        }
        Act {
            objectName: "renewal"
            visible: !root.pieces.chosenDesign && root.renewal.offered
            legend: qsTr("New techniques")
            onActed: root.asked("renewal")
        }
        Act {
            objectName: "onceMore"
            visible: !root.pieces.chosenDesign
            legend: qsTr("The same once more")
            onActed: root.pieces.onceMore()
        }
        Act {
            objectName: "handOver"
            visible: !root.pieces.chosenDesign
            legend: qsTr("As a file")
            onActed: root.pieces.handOver()
        }
        Act {
            objectName: "putAway"
            legend: root.pieces.chosenAway ? qsTr("Bring back") : qsTr("Put away")
            onActed: root.pieces.chosenAway ? root.pieces.bringBack() : root.pieces.putAway()
        }
    }
}
