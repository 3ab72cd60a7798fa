import QtQuick
import Mountwright.Components
import Mountwright.Controls
import Mountwright.Theme
import Mountwright.ViewModels

// One job as a key: the piece as far as it has grown, which it is, how far it has come, what is done next, and what it
// waits for.
TouchKey {
    id: root

    required property int index
    required property string title
    required property string act
    required property string wait
    required property bool window
    required property int done
    required property int all
    required property pieceDrawing picture
    readonly property double inset: Metrics.mm(1.4)

    signal taken

    legend: ""
    offers: ScreenAction {
        name: "job" + root.index
        text: root.title
        onTriggered: root.taken()
    }

    Rectangle {
        id: plate
        x: root.inset
        y: root.inset
        width: Math.min(height, root.width * 0.3)
        height: parent.height - 2 * y
        color: Theme.cloth

        PieceView {
            anchors.fill: parent
            anchors.margins: Metrics.mm(1.5)
            drawing: root.picture
        }
    }
    StandingPane {
        anchors.fill: parent
        anchors.leftMargin: plate.x + plate.width + Metrics.mm(3)
        anchors.topMargin: Metrics.mm(2)
        anchors.rightMargin: Metrics.mm(3)
        anchors.bottomMargin: Metrics.mm(2)
        title: root.title.split(",")[0]
        act: root.act
        wait: root.wait
        window: root.window
        done: root.done
        all: root.all
    }
}
