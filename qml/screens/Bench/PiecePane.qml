import QtQuick
import Mountwright.Components
import Mountwright.Theme
import Mountwright.ViewModels

// The drawing on the plate: the card of an act that sets out or measures a board's back, the piece with the number in its dimension, what the
// hand does, or the piece as it stands.
Item {
    id: root

    required property BenchViewModel bench
    // How many sentences of the act stand beside it.
    property int told: 0
    readonly property bool carded: bench.figure.hasCard
    readonly property bool dimensioned: bench.kind === BenchViewModel.Step && bench.figure.present && !carded && (bench.figure.hasStrip || bench.figure.drawn)
    readonly property bool acted: bench.kind === BenchViewModel.Step && !dimensioned && !carded && bench.hasAct

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
        drawing: root.dimensioned ? root.bench.figure.hasStrip ? root.bench.figure.strip : root.bench.figure.drawing : root.acted ? root.bench.act : root.bench.drawing
    }
}
