import QtQuick
import Mountwright.Components
import Mountwright.Controls
import Mountwright.Theme
import Mountwright.ViewModels

// The head of the bench. In its first line the time, the last act done, the stage, and at the right which piece; then the
// act; then from where its number is taken or what it is worked on, and at the right how that lies; and the stages as a
// rule. What keeps an alert from being heard takes the first line and as many more as it needs; the time stays.
Item {
    id: root

    required property BenchViewModel bench
    required property WatchViewModel watch
    readonly property bool troubled: watch.troubles !== ""
    readonly property bool worked: bench.kind === BenchViewModel.Step
    readonly property double gap: Metrics.mm(3)
    // What is left of the first line between the time and the piece's name.
    readonly property double free: width - time.implicitWidth - (name.visible && !narrow ? name.implicitWidth : 0) - 2 * gap - (undo.visible ? undo.implicitWidth + gap : 0)
    // What can be undone is named for as long as it can, in the place of the piece where there is none for both.
    readonly property bool undoFills: undo.visible && time.implicitWidth + letters.advanceWidth(bench.above) + undo.implicitWidth + name.implicitWidth + 4 * gap > width
    readonly property bool aboveFits: above.implicitWidth <= free
    readonly property bool stageFits: (aboveFits && above.text !== "" ? above.implicitWidth + gap : 0) + stage.implicitWidth <= free
    // On a tablet that stands upright the piece's name and the time of a test have lines of their own.
    readonly property bool narrow: width < Metrics.mm(140)
    readonly property double besideTitle: wait.visible && !narrow ? wait.width + gap : 0
    readonly property bool waits: bench.kind === BenchViewModel.Waiting
    // From where the number is taken, what the act is worked on, or how the wait is tested.
    readonly property string from: waits ? bench.waitTest : worked && bench.figure.present ? bench.figure.datum : bench.thing

    // What was done, as far as there is room beside the time: its first words and when. Of a line of which nothing has room
    // nothing is said.
    function shortened(said: string, room: double): string {
        const words = said.split(" ");
        const when = words.length > 2 && /^\d+:\d\d$/.test(words[words.length - 1]) ? " " + words.pop() : "";
        if (letters.advanceWidth(said) <= room)
            return said;
        for (let kept = words.length - 1; kept > 1; --kept) {
            const start = words.slice(0, kept).join(" ").replace(/,$/, "") + " …" + when;
            if (letters.advanceWidth(start) <= room)
                return start;
        }
        return "";
    }

    implicitHeight: strip.visible ? strip.y + strip.height : strip.y
    height: implicitHeight

    FontMetrics {
        id: letters
        font.family: Metrics.family
        font.pixelSize: Metrics.label
    }
    Words {
        id: time
        objectName: "watch"
        width: root.troubled ? root.width : implicitWidth
        text: root.troubled ? root.watch.time + " · " + root.watch.troubles : root.watch.time
        color: root.troubled ? Theme.worked : Theme.ink
        font.pixelSize: Metrics.label
        font.bold: true
    }
    // For a while what was done can be undone from its own line, which is raised meanwhile.
    KeyFace {
        visible: undo.visible
        x: time.implicitWidth + root.gap - Metrics.mm(1)
        y: -Metrics.mm(0.6)
        width: undo.x + undo.width + Metrics.mm(1.6) - x
        height: time.height + Metrics.mm(0.6)
    }
    Words {
        id: undo
        objectName: "undoWord"
        x: above.x + (above.visible ? above.width + root.gap : 0)
        width: implicitWidth
        visible: root.bench.justDone && !root.troubled
        text: qsTr("Undo")
        font.bold: true
        font.pixelSize: Metrics.label
        wrapMode: Text.NoWrap
    }
    Words {
        id: above
        objectName: "above"
        x: time.implicitWidth + root.gap
        width: implicitWidth
        visible: !root.troubled && root.aboveFits && text !== ""
        text: root.shortened(root.bench.above, root.free)
        color: Theme.quiet
        font.pixelSize: Metrics.label
        wrapMode: Text.NoWrap
    }
    Words {
        id: stage
        objectName: "stages"
        x: (undo.visible ? undo : above).x + (undo.visible ? undo.width + root.gap : above.visible ? above.width + root.gap : 0)
        width: implicitWidth
        visible: !root.troubled && root.stageFits && text !== ""
        text: strip.said
        color: Theme.quiet
        font.pixelSize: Metrics.label
        wrapMode: Text.NoWrap
    }
    ArtworkName {
        id: name
        objectName: "pieceName"
        visible: !root.troubled && text !== "" && implicitWidth <= root.width - (root.narrow ? 0 : time.implicitWidth + root.gap) && (root.narrow || !root.undoFills)
        // On a tablet that stands upright it has a line of its own.
        x: root.narrow ? 0 : root.width - width
        y: root.narrow ? time.height : time.baselineOffset - baselineOffset
        width: implicitWidth
        text: root.bench.shortPiece
        wrapMode: Text.NoWrap
    }
    Words {
        id: title
        objectName: "title"
        y: (root.narrow && name.visible ? name.y + name.height : time.height) - Metrics.mm(0.4)
        width: root.width - root.besideTitle
        text: root.bench.title
        font.bold: true
        font.pixelSize: Metrics.act
        lineHeight: 0.82
    }
    Words {
        id: where
        objectName: "where"
        y: title.y + title.height
        width: root.width - (lies.visible ? lies.width + root.gap : root.besideTitle)
        visible: text !== ""
        text: root.from
        lineHeight: 0.85
    }
    // How it lies now is no order to turn it; left and right are meant so.
    Row {
        id: lies
        objectName: "lies"
        visible: root.worked && root.bench.side !== ""
        anchors.right: parent.right
        y: where.visible ? where.y + where.height - height : title.y + title.height
        spacing: Metrics.mm(2)

        Words {
            id: board
            objectName: "thing"
            // Where the second line already names it, the title has room for both.
            visible: text !== "" && root.from !== text && where.implicitWidth + implicitWidth + mark.width + side.implicitWidth + 4 * parent.spacing <= root.width
            text: root.bench.thing
            font.pixelSize: Metrics.label
            wrapMode: Text.NoWrap
        }
        LieMark {
            id: mark
            anchors.verticalCenter: parent.verticalCenter
            back: root.bench.backUp
        }
        Words {
            id: side
            objectName: "side"
            text: root.bench.side
            font.pixelSize: Metrics.label
            wrapMode: Text.NoWrap
        }
    }
    // When it is tested: a time of day carries its verb.
    Row {
        id: wait
        objectName: "wait"
        visible: root.waits && root.bench.waitTime !== ""
        x: root.narrow ? 0 : root.width - width
        y: root.narrow ? (where.visible ? where.y + where.height : title.y + title.height) : title.y
        spacing: Metrics.mm(2)

        Words {
            anchors.baseline: clock.baseline
            text: root.bench.waitVerb
            color: Theme.calm
            font.bold: true
            wrapMode: Text.NoWrap
        }
        Words {
            id: clock
            text: root.bench.waitTime
            color: Theme.calm
            font.bold: true
            font.pixelSize: Metrics.figure
            wrapMode: Text.NoWrap
            lineHeight: 1
        }
    }
    StageStrip {
        id: strip
        y: Math.max(title.y + title.height, where.visible ? where.y + where.height : 0, lies.visible ? lies.y + lies.height : 0, wait.visible ? wait.y + wait.height : 0) + Metrics.mm(0.7)
        width: root.width
        visible: stages.length > 1
        stages: root.bench.stages
    }
}
