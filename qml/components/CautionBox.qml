import QtQuick
import Mountwright.Controls
import Mountwright.Theme

// A caution: signal word, hazard, what to avoid. It is shown before the act.
Rectangle {
    id: root

    required property bool shown
    required property string sign
    required property string word
    required property string hazard
    required property string says
    property int textSize: Metrics.text
    readonly property double inset: Metrics.mm(2)

    visible: shown
    height: shown ? Math.max(drawn.visible ? drawn.height : 0, said.implicitHeight) + 2 * inset : 0
    color: Theme.card
    border.color: Theme.ink
    border.width: 2 * Metrics.hairline

    SafetySign {
        id: drawn
        x: root.inset
        y: root.inset
        visible: root.sign !== ""
        sign: root.sign
    }
    Column {
        id: said
        x: drawn.visible ? drawn.width + 2.5 * root.inset : root.inset * 1.5
        y: root.inset
        width: root.width - x - root.inset

        Words {
            width: parent.width
            text: "<b>%1 %2</b>&nbsp; %3".arg(root.word).arg(root.hazard).arg(root.says)
            textFormat: Text.StyledText
            font.pixelSize: root.textSize
        }
    }
}
