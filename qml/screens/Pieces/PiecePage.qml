pragma ComponentBehavior: Bound

import QtQuick
import Mountwright.Components
import Mountwright.Controls
import Mountwright.Theme
import Mountwright.ViewModels

// One piece at the desk: its picture, its progress, and all that can be done with it.
DeskFrame {
    id: root

    required property PiecesModel pieces
    required property RenewalViewModel renewal
    required property DesignViewModel design

    place: ""

    readonly property bool begun: !pieces.chosenDesign

    actions: [
        ScreenAction {
            name: "goOn"
            text: root.begun ? qsTr("To the bench") : qsTr("Go on designing")
            filled: true
            place: ScreenAction.Foot
            onTriggered: {
                if (root.begun)
                    root.over();
                else if (root.design.openDesign(root.pieces.chosenId))
                    root.asked("design");
            }
        },
        ScreenAction {
            name: "again"
            text: qsTr("For another picture")
            place: ScreenAction.Foot
            onTriggered: {
                if (root.design.beginAgain(root.pieces.chosenId))
                    root.asked("design");
            }
        },
        ScreenAction {
            name: "record"
            text: qsTr("Record and care")
            enabled: root.begun
            place: ScreenAction.Foot
            onTriggered: root.asked("record")
        },
        ScreenAction {
            name: "cutting"
            text: qsTr("Cut sheets")
            enabled: root.begun
            place: ScreenAction.Foot
            onTriggered: root.asked("cutting")
        },
        ScreenAction {
            name: "renewal"
            text: qsTr("New techniques")
            enabled: root.begun && root.renewal.offered
            place: ScreenAction.Foot
            onTriggered: root.asked("renewal")
        },
        ScreenAction {
            name: "onceMore"
            text: qsTr("The same once more")
            enabled: root.begun
            place: ScreenAction.Foot
            onTriggered: root.pieces.onceMore()
        },
        ScreenAction {
            name: "handOver"
            text: qsTr("As a file")
            enabled: root.begun
            place: ScreenAction.Foot
            onTriggered: root.pieces.handOver()
        },
        ScreenAction {
            name: "putAway"
            text: root.pieces.chosenAway ? qsTr("Bring back") : qsTr("Put away")
            place: ScreenAction.Foot
            onTriggered: root.pieces.chosenAway ? root.pieces.bringBack() : root.pieces.putAway()
        }
    ]

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
            text: root.pieces.chosenAhead
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

        ActionKeys {
            area: root
            place: ScreenAction.Foot

            TouchKey {
                required property ScreenAction modelData

                offers: modelData
                width: Metrics.mm(44)
                height: Metrics.mm(14)
                legendSize: Metrics.deskText
            }
        }
    }
}
