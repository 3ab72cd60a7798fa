import QtQuick
import Mountwright.Controls
import Mountwright.Theme
import Mountwright.ViewModels

// The caution of a step: signal word, hazard, what to avoid. Stands before the act.
Rectangle {
    id: root

    required property BenchViewModel bench
    property int textSize: Metrics.text
    readonly property double inset: Metrics.mm(2)

    visible: bench.hasCaution
    height: visible ? Math.max(sign.visible ? sign.height : 0, said.implicitHeight) + 2 * inset : 0
    color: Theme.card
    border.color: Theme.ink
    border.width: 2 * Metrics.hairline

    SafetySign {
        id: sign
        x: root.inset
        y: root.inset
        visible: root.bench.cautionSign !== ""
        sign: root.bench.cautionSign
    }
    Column {
        id: said
        x: sign.visible ? sign.width + 2.5 * root.inset : root.inset * 1.5
        y: root.inset
        width: root.width - x - root.inset

        Words {
            width: parent.width
            text: "<b>%1 %2</b>&nbsp; %3".arg(root.bench.cautionWord).arg(root.bench.cautionHazard).arg(root.bench.cautionText)
            textFormat: Text.StyledText
            font.pixelSize: root.textSize
        }
    }
}
