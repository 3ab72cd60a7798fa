import QtQuick
import Mountwright.Components
import Mountwright.Controls
import Mountwright.Theme
import Mountwright.ViewModels

// The piece as it lies on the bench: the worked part in ink, the rest in pencil, the corner marked.
Item {
    id: root

    required property BenchViewModel bench
    readonly property bool carded: root.bench.figure.hasCard
    // The height of the words alone; the drawing gets the rest, where it can still be read.
    readonly property double least: name.height + lies.height + Metrics.mm(2)

    Words {
        id: name
        objectName: "pieceName"
        width: root.width
        text: root.bench.shortPiece
        font.pixelSize: Metrics.label
        font.italic: true
    }
    CardView {
        id: card
        anchors.fill: piece
        visible: shown
        figure: root.bench.figure
        // Beside the title it is read at a glance, or left to its own screen.
        shortest: Metrics.mm(20)
    }
    PieceView {
        id: piece
        anchors.top: name.bottom
        anchors.topMargin: Metrics.mm(2)
        anchors.bottom: lies.top
        anchors.bottomMargin: Metrics.mm(2)
        width: root.width
        visible: height >= Metrics.mm(12) && !card.shown
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
