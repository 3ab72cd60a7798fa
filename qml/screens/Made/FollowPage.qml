import QtQuick
import Mountwright.Components
import Mountwright.Controls
import Mountwright.Theme
import Mountwright.ViewModels

// An inner window not yet cut: preserve its cover over the work, or its reveal under the board above.
CornerFrame {
    id: root

    required property MadeViewModel made
    required property WatchViewModel watch
    required property string piece

    function done() {
        onwards();
    }

    // The maker has chosen.
    signal onwards

    // The pedal goes from one choice to the other.
    actions: ScreenAction {
        name: "theOther"
        text: qsTr("The other")
        place: ScreenAction.NoKey
        by: ScreenAction.Forward
        onTriggered: root.made.follow(!root.made.reveal)
    }

    PageHead {
        id: heading
        width: parent.width
        watch: root.watch
        piece: root.piece
        title: qsTr("What shall the %1 board keep?").arg(root.made.followBoard)
        where: qsTr("it is still to be cut")
    }
    Row {
        anchors.top: heading.bottom
        anchors.topMargin: Metrics.mm(4)
        spacing: Metrics.gap

        TouchKey {
            width: (root.width - 2 * Metrics.corner - Metrics.gap) / 2
            height: Metrics.mm(54)
            legendSize: Metrics.title
            hintSize: Metrics.text
            offers: ScreenAction {
                name: "keepCover"
                text: qsTr("The cover")
                hint: root.made.coverFigures
                chosen: !root.made.reveal
                enabled: root.made.coverFigures !== ""
                onTriggered: root.made.follow(false)
            }
        }
        TouchKey {
            width: (root.width - 2 * Metrics.corner - Metrics.gap) / 2
            height: Metrics.mm(54)
            legendSize: Metrics.title
            hintSize: Metrics.text
            offers: ScreenAction {
                name: "keepReveal"
                text: qsTr("The reveal")
                hint: root.made.revealFigures
                chosen: root.made.reveal
                enabled: root.made.revealFigures !== ""
                onTriggered: root.made.follow(true)
            }
        }
    }
    Words {
        anchors.bottom: parent.bottom
        width: parent.width
        text: root.made.refusal !== "" ? root.made.refusal : qsTr("The dark one holds. Done: go on with it.")
        color: root.made.refusal !== "" ? Theme.worked : Theme.quiet
        font.pixelSize: Metrics.label
    }
}
