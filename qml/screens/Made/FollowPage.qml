import QtQuick
import Mountwright.Components
import Mountwright.Controls
import Mountwright.Theme
import Mountwright.ViewModels

// An inner window not yet cut: keep how far it covers the work, or how far it shows under the board above.
CornerFrame {
    id: root

    required property MadeViewModel made
    required property ScreenBase area

    function done() {
        area.done();
    }
    function back() {
        area.back();
    }

    Words {
        id: heading
        width: parent.width
        text: qsTr("The %1 board is still to be cut. What shall it keep?").arg(root.made.followBoard)
        font.bold: true
        font.pixelSize: Metrics.title
    }
    Row {
        anchors.top: heading.bottom
        anchors.topMargin: Metrics.mm(4)
        spacing: Metrics.gap

        TouchKey {
            objectName: "keepCover"
            visible: root.made.coverFigures !== ""
            width: (root.width - 2 * Metrics.corner - Metrics.gap) / 2
            height: Metrics.mm(54)
            legend: qsTr("The cover")
            legendSize: Metrics.title
            hint: root.made.coverFigures
            hintSize: Metrics.text
            filled: !root.made.reveal
            onActed: root.made.follow(false)
        }
        TouchKey {
            objectName: "keepReveal"
            visible: root.made.revealFigures !== ""
            width: (root.width - 2 * Metrics.corner - Metrics.gap) / 2
            height: Metrics.mm(54)
            legend: qsTr("The reveal")
            legendSize: Metrics.title
            hint: root.made.revealFigures
            hintSize: Metrics.text
            filled: root.made.reveal
            onActed: root.made.follow(true)
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
