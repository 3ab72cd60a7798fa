pragma ComponentBehavior: Bound

import QtQuick
import Mountwright.Controls
import Mountwright.Theme
import Mountwright.ViewModels

// The answers to a choice: forms as their outlines, materials as they look with their names, other short ones as words,
// and proposals beneath each other with their result and reason.
Grid {
    id: root

    required property FormViewModel form
    readonly property bool reasons: form.optionsHaveReasons
    readonly property bool plain: form.optionsPlain && !reasons
    // As many as are wide enough for a finger; words need half a hand.
    readonly property int across: reasons ? 1 : Math.max(1, Math.floor((width + spacing) / ((plain ? Metrics.mm(12) : Metrics.mm(21)) + spacing)))
    readonly property double cellWidth: (width - (across - 1) * spacing) / across

    columns: across
    spacing: Metrics.deskGap

    Repeater {
        model: root.form.options

        TouchKey {
            id: answer

            required property int index
            required property string title
            required property string note
            required property string problem
            required property bool chosen
            required property pieceDrawing sample
            readonly property bool sampled: sample.drawn

            width: root.cellWidth
            height: root.plain ? Metrics.mm(10.5) : Math.max(Metrics.deskKey, said.implicitHeight + Metrics.mm(root.reasons ? 4 : 2.5))
            legend: ""
            // An answer that cannot be worked shows the reason and cannot be chosen.
            stays: true
            offers: ScreenAction {
                name: "option" + answer.index
                text: answer.title
                chosen: answer.chosen
                enabled: root.visible && answer.problem === ""
                onTriggered: root.form.chooseOption(answer.index)
            }

            Sample {
                anchors.centerIn: parent
                visible: root.plain && answer.sampled
                width: Metrics.mm(8)
                height: Metrics.mm(8)
                edged: false
                shown: answer.sample
            }
            Column {
                id: said
                x: Metrics.mm(root.reasons ? 2.4 : 1.5)
                width: parent.width - 2 * x
                anchors.verticalCenter: parent.verticalCenter
                visible: !root.plain
                spacing: Metrics.mm(0.6)

                Sample {
                    visible: answer.sampled
                    width: parent.width
                    height: Metrics.mm(6)
                    shown: answer.sample
                }
                Words {
                    width: said.width
                    text: answer.title
                    color: answer.words
                    font.bold: !answer.sampled
                    font.pixelSize: root.reasons ? Metrics.deskText : Metrics.deskLabel
                }
                Words {
                    width: said.width
                    visible: answer.note !== ""
                    text: answer.note
                    color: answer.words
                    font.pixelSize: Metrics.deskLabel
                }
            }
        }
    }
}
