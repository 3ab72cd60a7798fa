import QtQuick
import Mountwright.Components
import Mountwright.Controls
import Mountwright.Theme
import Mountwright.ViewModels

// One piece on the board: as far as it has grown, standing on its ledge and drawn to the scale of all; below it which piece,
// for whom and when, how far it has come, what is done next, and what it waits for.
TouchKey {
    id: root

    required property int index
    required property string title
    required property string of
    required property string act
    required property string wait
    required property bool window
    required property int done
    required property int all
    required property string due
    required property bool late
    required property bool atDesk
    required property bool onBench
    required property double pieceWidth
    required property double pieceHeight
    required property pieceDrawing picture
    // Pixels to a mm of every piece.
    required property double pixels
    required property double pictureHeight
    readonly property double inset: Metrics.mm(1.4)
    readonly property double air: Metrics.mm(1.2)
    // A title up to its first comma, as on the shelf.
    readonly property string name: title.split(",")[0]
    readonly property bool finished: all > 0 && done === all

    signal taken

    legend: ""
    offers: ScreenAction {
        name: "piece" + root.index
        text: root.title
        onTriggered: root.taken()
    }

    Rectangle {
        x: root.inset
        y: root.inset
        width: parent.width - 2 * x
        height: root.pictureHeight
        color: Theme.cloth
    }
    PieceView {
        id: view
        readonly property double frame: 3 * hairline
        width: root.pieceWidth * root.pixels + 2 * frame
        height: root.pieceHeight * root.pixels + 2 * frame
        x: (parent.width - width) / 2
        y: ledge.y - height + frame
        drawing: root.picture
    }
    Rectangle {
        id: ledge
        x: root.inset
        y: root.inset + root.pictureHeight
        width: parent.width - 2 * x
        height: Metrics.ledge
        color: Theme.ink
    }
    // What lies on the bench stands out by a second board under it.
    Rectangle {
        visible: root.onBench
        anchors.top: ledge.bottom
        anchors.horizontalCenter: ledge.horizontalCenter
        width: ledge.width - 2 * root.air
        height: Metrics.ledge
        color: Theme.ink
    }
    Words {
        x: root.inset + root.air
        y: root.inset + Metrics.mm(1)
        visible: root.onBench
        text: qsTr("on the bench")
        font.pixelSize: Metrics.deskLabel
    }
    FitPane {
        id: told
        x: root.inset + root.air
        anchors.top: ledge.bottom
        anchors.topMargin: Metrics.mm(1.6)
        anchors.bottom: parent.bottom
        anchors.bottomMargin: root.inset + Metrics.mm(0.6)
        width: parent.width - 2 * x
        key: root.title + root.of + root.due + root.act + root.wait + root.done
        tightest: 3
        spacing: level < 1 ? Metrics.mm(0.7) : Metrics.mm(0.2)

        ArtworkName {
            width: told.width
            text: root.name
            font.pixelSize: Metrics.deskName
            lineHeight: told.level < 1 ? 0.95 : 0.85
        }
        Words {
            width: told.width
            visible: text !== "" && told.level < 3
            // Where there is little room for whom it is made is left to its page.
            text: told.level < 2 ? root.of : root.of.split(" · ")[0]
            color: Theme.quiet
            font.pixelSize: Metrics.deskLabel
        }
        Words {
            width: told.width
            visible: text !== ""
            text: root.due
            color: root.late ? Theme.ink : Theme.quiet
            font.bold: root.late
            font.pixelSize: told.level < 1 ? Metrics.deskText : Metrics.deskLabel
        }
        ProgressRule {
            width: told.width
            visible: root.all > 0 || root.atDesk
            done: root.done
            all: root.all
        }
        Words {
            width: told.width
            visible: text !== "" && told.level < 3
            text: root.all > 0 ? qsTr("%1 of %2 steps").arg(root.done).arg(root.all) : root.atDesk ? root.act : ""
            color: Theme.quiet
            font.pixelSize: told.level < 1 ? Metrics.deskText : Metrics.deskLabel
        }
        Words {
            width: told.width
            visible: !root.atDesk
            text: root.act
            font.bold: true
            font.pixelSize: Metrics.deskText
            lineHeight: 0.9
        }
        Words {
            width: told.width
            visible: text !== ""
            text: root.wait !== "" ? root.wait : root.atDesk || root.finished || root.all === 0 ? "" : qsTr("nothing drying")
            color: root.wait === "" ? Theme.quiet : root.window ? Theme.worked : Theme.calm
            font.bold: root.wait !== ""
            font.pixelSize: told.level < 3 ? Metrics.deskText : Metrics.deskLabel
            lineHeight: 0.9
        }
    }
}
