import QtQuick
import Mountwright.Components
import Mountwright.Controls
import Mountwright.Theme
import Mountwright.ViewModels

// The piece as it lies: what is worked inked, the rest in pencil, the corner marked.
Item {
    id: root

    required property BenchViewModel bench

    Words {
        id: noSound
        objectName: "noSound"
        width: root.width
        visible: text !== ""
        text: root.bench.soundTrouble
        color: Theme.worked
        font.pixelSize: Metrics.label
        font.bold: true
    }
    PieceView {
        anchors.top: noSound.visible ? noSound.bottom : root.top
        anchors.topMargin: noSound.visible ? Metrics.mm(2) : 0
        anchors.bottom: lies.top
        anchors.bottomMargin: Metrics.mm(2)
        width: root.width
        drawing: root.bench.drawing
    }
    Words {
        id: lies
        anchors.bottom: root.bottom
        width: root.width
        text: root.bench.lies + (root.bench.lies !== "" && root.bench.hands !== "" ? "\n" : "") + root.bench.hands
        color: Theme.quiet
        font.pixelSize: Metrics.label
    }
}
