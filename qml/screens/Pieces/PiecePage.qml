pragma ComponentBehavior: Bound

import QtQuick
import Mountwright.Components
import Mountwright.Controls
import Mountwright.Theme
import Mountwright.ViewModels

// One piece at the desk: as it has grown; how far it is, what comes next and what runs; what today still holds and what is
// to be bought for it; and what can be done with it, in the order in which it is wanted.
DeskFrame {
    id: root

    required property PiecesModel pieces
    required property RenewalViewModel renewal
    required property DesignViewModel design

    place: ""

    readonly property bool begun: !pieces.chosenDesign
    readonly property bool wide: width > height
    readonly property double column: wide ? (width - 2 * Metrics.deskMargin - 2 * gap) / 3 : (width - 2 * Metrics.deskMargin - gap) / 2
    readonly property double gap: Metrics.mm(5)

    actions: [
        ScreenAction {
            name: "goOn"
            text: qsTr("Go on designing")
            filled: true
            enabled: !root.begun
            place: ScreenAction.Foot
            onTriggered: {
                if (root.design.openDesign(root.pieces.chosenId))
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
            name: "again"
            text: qsTr("For another picture")
            place: ScreenAction.Foot
            onTriggered: {
                if (root.design.beginAgain(root.pieces.chosenId))
                    root.asked("design");
            }
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

    FontMetrics {
        id: letters
        font.family: Metrics.family
        font.bold: true
        font.pixelSize: Metrics.deskText
    }
    Rectangle {
        id: plate
        width: root.column
        height: root.wide ? parent.height - keys.height - Metrics.mm(3) : Metrics.mm(108)
        color: Theme.cloth

        PieceView {
            anchors.fill: parent
            anchors.margins: Metrics.mm(3)
            drawing: root.pieces.chosenPicture
        }
    }
    FitPane {
        id: standing
        x: root.column + root.gap
        width: root.column
        height: plate.height
        key: root.pieces.chosenId + root.pieces.said + root.pieces.waits.count
        tightest: 3
        spacing: Metrics.mm(1.6)

        ArtworkName {
            width: parent.width
            text: root.pieces.chosenTitle
            font.pixelSize: Math.ceil(Metrics.deskTitle * Metrics.serif)
        }
        Words {
            width: parent.width
            visible: text !== ""
            text: {
                const parts = [root.pieces.chosenOf, root.pieces.chosenDue];
                return parts.filter(part => part !== "").join("\n");
            }
            color: Theme.quiet
            font.pixelSize: Metrics.deskText
        }
        ProgressRule {
            width: parent.width
            visible: root.pieces.chosenAll > 0
            done: root.pieces.chosenDone
            all: root.pieces.chosenAll
        }
        Words {
            width: parent.width
            visible: root.pieces.chosenAll > 0
            text: {
                const parts = [qsTr("%1 of %2 steps").arg(root.pieces.chosenDone).arg(root.pieces.chosenAll), root.pieces.chosenHands];
                return parts.filter(part => part !== "").join(" · ");
            }
            font.pixelSize: Metrics.deskText
        }
        Words {
            width: parent.width
            visible: text !== ""
            text: root.pieces.chosenReady
            font.pixelSize: Metrics.deskText
        }
        Words {
            width: parent.width
            text: root.pieces.chosenAct
            font.bold: true
            font.pixelSize: Metrics.deskTitle
        }
        Words {
            width: parent.width
            visible: text !== ""
            text: root.pieces.said
            color: root.pieces.refused ? Theme.worked : Theme.calm
            font.bold: true
            font.pixelSize: Metrics.deskText
        }
        PieceRows {
            width: parent.width
            heading: qsTr("It waits for")
            valueInk: Theme.calm
            rows: root.pieces.waits
            most: [4, 3, 2, 1][standing.level]
            noted: standing.level < 2
        }
    }
    FitPane {
        id: lists
        x: root.wide ? 2 * (root.column + root.gap) : 0
        y: root.wide ? 0 : plate.height + Metrics.mm(4)
        width: root.wide ? root.column : parent.width
        height: root.wide ? plate.height : keys.y - y - Metrics.mm(3)
        key: root.pieces.chosenId + root.pieces.today.count + "/" + root.pieces.wants.count
        tightest: 6
        spacing: Metrics.mm(4)

        PieceRows {
            width: parent.width
            visible: root.pieces.chosenReady !== ""
            heading: qsTr("Today, going on from now")
            rows: root.pieces.today
            none: qsTr("Nothing by hand today.")
            most: [8, 6, 5, 5, 4, 3, 2][lists.level]
        }
        PieceRows {
            width: parent.width
            rows: root.pieces.wants
            most: [12, 8, 6, 8, 6, 5, 3][lists.level]
            noted: lists.level < 3
        }
    }
    Flow {
        id: keys
        anchors.bottom: parent.bottom
        width: parent.width
        spacing: Metrics.deskGap

        ActionKeys {
            area: root
            place: ScreenAction.Foot

            TouchKey {
                required property ScreenAction modelData

                offers: modelData
                width: Math.ceil(letters.advanceWidth(legend)) + Metrics.mm(6)
                height: Metrics.deskKey
                legendSize: Metrics.deskText
                margin: 0
            }
        }
    }
}
