import QtQuick
import Mountwright.Components
import Mountwright.Controls
import Mountwright.Theme
import Mountwright.ViewModels

// What the hands can do at another piece while this one waits: one press puts that piece on the bench.
TouchKey {
    id: root

    required property MeanwhileViewModel meanwhile
    readonly property double inset: Metrics.mm(2)

    signal taken

    legend: ""
    offers: ScreenAction {
        name: "meanwhile"
        text: qsTr("Meanwhile %1").arg(root.meanwhile.piece)
        enabled: root.meanwhile.present
        onTriggered: root.taken()
    }

    PieceView {
        id: picture
        x: Metrics.mm(2.4)
        y: root.inset
        width: Metrics.mm(21)
        height: root.height - 2 * root.inset
        drawing: root.meanwhile.drawing
    }
    FitPane {
        id: pane
        x: picture.x + picture.width + Metrics.mm(3)
        y: root.inset
        width: root.width - x - root.inset
        height: root.height - 2 * root.inset
        key: root.meanwhile.piece + root.meanwhile.act + root.meanwhile.terms
        tightest: 2

        Row {
            width: parent.width
            spacing: Metrics.mm(1.5)

            Words {
                anchors.baseline: name.baseline
                text: qsTr("meanwhile")
                color: Theme.quiet
                font.pixelSize: Metrics.label
                wrapMode: Text.NoWrap
            }
            ArtworkName {
                id: name
                width: Math.max(0, Math.min(implicitWidth, parent.width - x))
                text: root.meanwhile.piece
                lineHeight: 1
                // A title has no other form that is shorter.
                maximumLineCount: pane.level === 0 ? 1 : 2
                wrapMode: Text.WordWrap
            }
        }
        Words {
            objectName: "meanwhileAct"
            width: parent.width
            text: root.meanwhile.act
            font.bold: true
            font.pixelSize: pane.level < 2 ? Metrics.text : Metrics.label
        }
        Words {
            objectName: "meanwhileTerms"
            width: parent.width
            text: root.meanwhile.terms
            font.pixelSize: Metrics.label
        }
    }
}
