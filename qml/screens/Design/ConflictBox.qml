import QtQuick
import Mountwright.Controls
import Mountwright.Theme
import Mountwright.ViewModels

// What stands against the design, at the foot of the card, with the one change that settles it; or the way to it.
Item {
    id: root

    required property DesignViewModel design
    readonly property bool mends: design.mendLabel !== ""
    readonly property bool leads: !mends && !design.conflictIsHere

    // While a field is entered its pad has the room, and what is wrong with it stands beneath. What is only to be looked at
    // is told where it is.
    visible: design.conflictPlace !== "" && design.entering === FormViewModel.Nothing && (design.conflictIsHere || !design.conflictIsNotice)
    implicitHeight: visible ? said.implicitHeight + (keys.visible ? keys.height + Metrics.mm(1.5) : 0) + Metrics.mm(4) : 0

    Rectangle {
        width: Metrics.mm(1.5)
        height: parent.height
        color: Theme.ink
    }
    Rectangle {
        x: Metrics.mm(3.6)
        y: said.y + Metrics.deskLabel * 0.55 - height / 2 + Metrics.mm(0.4)
        width: Metrics.mm(1.9)
        height: width
        rotation: 45
        color: root.design.conflictIsNotice ? "transparent" : Theme.ink
        border.color: Theme.ink
        border.width: 1.5 * Metrics.hairline
    }
    Column {
        id: said
        x: Metrics.mm(7)
        y: Metrics.mm(1.5)
        width: root.width - x - Metrics.mm(3)

        Words {
            width: parent.width
            text: root.design.conflictPlace
            font.bold: true
            font.pixelSize: Metrics.deskLabel
        }
        Words {
            width: parent.width
            text: root.design.conflict
            font.pixelSize: Metrics.deskLabel
        }
        Words {
            width: parent.width
            visible: root.design.conflictIsHere && text !== ""
            text: root.design.mendSays
            color: Theme.quiet
            font.pixelSize: Metrics.deskLabel
        }
        Words {
            width: parent.width
            visible: root.design.conflictsMore > 0
            text: root.design.conflictsMore === 1 ? qsTr("and one more") : qsTr("and %1 more").arg(root.design.conflictsMore)
            color: Theme.quiet
            font.pixelSize: Metrics.deskLabel
        }
    }
    Item {
        id: keys
        anchors.bottom: parent.bottom
        anchors.bottomMargin: Metrics.mm(1.5)
        x: Metrics.mm(3.4)
        width: root.width - x - Metrics.mm(3)
        height: Math.max(Metrics.deskKey, mending.implicitContentHeight + Metrics.mm(2))
        visible: root.mends || root.leads

        TouchKey {
            id: mending
            anchors.fill: parent
            legendSize: Metrics.deskLabel
            offers: ScreenAction {
                name: "mend"
                text: root.design.mendLabel
                enabled: root.visible && root.mends
                onTriggered: root.design.mend()
            }
        }
        TouchKey {
            anchors.fill: parent
            legendSize: Metrics.deskText
            offers: ScreenAction {
                name: "toConflict"
                text: qsTr("Go there")
                enabled: root.visible && root.leads
                onTriggered: root.design.goToConflict()
            }
        }
    }
}
