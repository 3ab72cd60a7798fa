import QtQuick
import Mountwright.Components
import Mountwright.Theme
import Mountwright.ViewModels

// The drawing on the plate beside words: the card of an act that sets out or measures a board's back, what the hand does,
// or the piece as it stands.
Item {
    id: root

    required property BenchViewModel bench
    // How many sentences of the act stand beside it.
    property int told: 0
    readonly property bool carded: bench.figure.hasCard
    readonly property bool acted: bench.kind === BenchViewModel.Step && !carded && bench.hasAct

    CardView {
        id: card
        objectName: "card"
        anchors.fill: parent
        visible: shown
        figure: root.bench.figure
    }
    PieceView {
        objectName: "plateDrawing"
        anchors.fill: parent
        visible: height >= Metrics.mm(12) && !card.shown
        numbered: root.acted ? root.told : 0
        drawing: root.acted ? root.bench.act : root.bench.drawing
    }
}
