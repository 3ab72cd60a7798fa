pragma ComponentBehavior: Bound

import QtQuick
import Mountwright.Components
import Mountwright.Controls
import Mountwright.Theme
import Mountwright.ViewModels

// The changes that the present techniques would make to a piece under way, and adopting them.
DeskFrame {
    id: root

    required property RenewalViewModel renewal

    place: ""

    function done() {
        renewal.take();
    }

    doneAction.enabled: renewal.takeable
    actions: [
        ScreenAction {
            name: "leaveRenewal"
            text: root.renewal.takeable ? qsTr("Keep as begun") : qsTr("To the piece")
            place: ScreenAction.Foot
            onTriggered: root.leave()
        },
        ScreenAction {
            name: "takeRenewal"
            text: qsTr("Work by the new ones")
            filled: true
            enabled: root.renewal.takeable
            place: ScreenAction.Foot
            onTriggered: root.renewal.take()
        },
        ScreenAction {
            name: "takeRenewalBack"
            text: qsTr("Undo")
            enabled: root.renewal.taken
            place: ScreenAction.Foot
            onTriggered: root.renewal.takeBack()
        }
    ]

    ArtworkName {
        id: heading
        width: parent.width
        text: root.renewal.title
        font.pixelSize: Math.ceil(Metrics.deskTitle * Metrics.serif)
    }
    Words {
        id: reason
        anchors.top: heading.bottom
        anchors.topMargin: Metrics.mm(1)
        width: parent.width
        visible: root.renewal.rows.count > 0
        text: qsTr("The techniques of this piece were changed after it was begun. %1; what is done stays done.").arg(root.renewal.extent)
        color: Theme.quiet
        font.pixelSize: Metrics.deskText
    }
    Column {
        id: choice
        anchors.top: reason.visible ? reason.bottom : heading.bottom
        anchors.topMargin: Metrics.mm(3)
        width: parent.width
        spacing: Metrics.mm(3)

        Words {
            width: parent.width
            visible: text !== ""
            text: root.renewal.said
            color: root.renewal.offered ? Theme.worked : Theme.calm
            font.bold: true
            font.pixelSize: Metrics.deskText
        }
        Row {
            spacing: Metrics.deskGap

            ActionKeys {
                area: root
                place: ScreenAction.Foot

                TouchKey {
                    required property ScreenAction modelData

                    offers: modelData
                    width: Metrics.mm(52)
                    height: Metrics.deskKey
                    legendSize: Metrics.deskText
                }
            }
        }
    }
    ListView {
        anchors.top: choice.bottom
        anchors.topMargin: Metrics.mm(4)
        anchors.bottom: parent.bottom
        width: parent.width
        clip: true
        model: root.renewal.rows
        spacing: Metrics.mm(3)
        boundsBehavior: Flickable.StopAtBounds

        delegate: Column {
            id: difference

            required property string title
            required property string note

            width: ListView.view.width

            Words {
                width: difference.width
                text: difference.title
                font.bold: true
                font.pixelSize: Metrics.deskText
            }
            Words {
                width: difference.width
                text: difference.note
                font.pixelSize: Metrics.deskText
            }
        }
    }
}
