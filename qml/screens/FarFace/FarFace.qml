import QtQuick
import Mountwright.Components
import Mountwright.Controls
import Mountwright.Theme
import Mountwright.ViewModels

// The act, the number in its dimension and the next event, to be read from two metres. Any touch goes back to the bench.
ScreenBase {
    id: root

    required property BenchViewModel bench
    required property ShelfModel shelf
    required property WatchViewModel watch
    readonly property double distance: Metrics.farDistance
    readonly property bool upright: height > width
    readonly property bool numbered: bench.figure.present
    readonly property double margin: Metrics.mm(4)

    // It takes the place of the piece's name where something is known to run beside it.
    readonly property string unknown: shelf.unknown === "" ? "" : qsTr("Not all is known.")

    idle: true

    function done() {
        over();
    }

    // The pedals turn the act's numbers; before the first and after the last they go back to the bench.
    doneAction.by: ScreenAction.Enter
    backAction.by: ScreenAction.Nobody
    actions: [
        ScreenAction {
            name: "pedalBack"
            text: qsTr("The number before")
            place: ScreenAction.NoKey
            by: ScreenAction.Back
            onTriggered: {
                if (!root.bench.figure.back())
                    root.over();
            }
        },
        ScreenAction {
            name: "pedalForward"
            text: qsTr("The next number")
            place: ScreenAction.NoKey
            by: ScreenAction.Forward
            onTriggered: {
                if (!root.bench.figure.forward())
                    root.over();
            }
        }
    ]

    // The first line: now, which piece, and how it lies; the name goes to the next line where it has no room.
    Words {
        id: time
        objectName: "watch"
        x: root.margin
        y: Metrics.mm(2.4)
        width: implicitWidth
        text: root.watch.time
        font.bold: true
        font.pixelSize: Metrics.farLabel
        wrapMode: Text.NoWrap
        lineHeight: 1
    }
    ArtworkName {
        id: name
        objectName: "pieceName"
        readonly property double room: (lies.visible ? lies.x : root.width - root.margin) - time.x - time.width - 2 * Metrics.mm(4)
        x: time.x + time.width + Metrics.mm(4)
        anchors.baseline: time.baseline
        width: implicitWidth
        // "Pilot's chart" of a longer title, then "Pilot's".
        readonly property string called: {
            const words = root.bench.shortPiece.split(" ");
            const two = words.length > 1 && words[1].length > 3 ? words[0] + " " + words[1] : words[0];
            for (const name of [root.bench.shortPiece, two]) {
                if (letters.advanceWidth(name) <= room)
                    return name;
            }
            return words[0];
        }
        visible: text !== "" && implicitWidth <= room && !more.visible
        text: called
        font.pixelSize: Metrics.farName
        wrapMode: Text.NoWrap
    }
    FontMetrics {
        id: letters
        font: name.font
    }
    Words {
        id: more
        objectName: "unknown"
        x: name.x
        anchors.baseline: time.baseline
        width: lies.visible ? lies.x - x - Metrics.mm(3) : root.width - x - root.margin
        visible: root.unknown !== "" && root.shelf.nextBrief !== "" && !root.upright
        text: root.unknown
        color: Theme.worked
        font.bold: true
        font.pixelSize: Metrics.farLabel
        lineHeight: 0.85
    }
    Row {
        id: lies
        objectName: "lies"
        visible: root.numbered && root.bench.side !== ""
        x: root.width - root.margin - width
        y: time.y
        height: time.height
        spacing: Metrics.mm(3)

        LieMark {
            anchors.verticalCenter: parent.verticalCenter
            height: Metrics.mm(9)
            line: Metrics.mm(0.7)
            back: root.bench.backUp
        }
        Words {
            objectName: "side"
            anchors.verticalCenter: parent.verticalCenter
            text: root.bench.side
            font.pixelSize: Metrics.farLabel
            wrapMode: Text.NoWrap
            lineHeight: 1
        }
    }
    // The act; how many stands at its end.
    Words {
        id: title
        objectName: "title"
        x: root.margin
        y: (more.visible ? Math.max(time.y + time.height, more.y + more.height) : time.y + time.height) - Metrics.mm(1.6)
        width: root.width - 2 * x - (count.visible ? count.width + Metrics.mm(5) : 0)
        text: root.bench.title
        font.bold: true
        font.pixelSize: plain.advanceWidth(text) > (root.numbered ? 0.98 : 1.9) * width ? Metrics.farLabel : Metrics.farText
        lineHeight: 0.84
    }
    FontMetrics {
        id: plain
        font.family: Metrics.family
        font.bold: true
        font.pixelSize: Metrics.farText
    }
    Words {
        id: count
        objectName: "count"
        visible: root.numbered && text !== ""
        x: root.width - root.margin - width
        y: title.y
        width: implicitWidth
        text: root.bench.figure.count
        font.bold: true
        font.pixelSize: Metrics.farText
        wrapMode: Text.NoWrap
        lineHeight: 0.84
    }
    Rectangle {
        id: plate
        objectName: "plate"
        y: title.y + title.height + Metrics.mm(1)
        width: root.width
        height: next.y - y - Metrics.mm(1)
        color: Theme.cloth

        FarPlate {
            anchors.fill: parent
            anchors.leftMargin: root.margin
            anchors.rightMargin: root.margin
            anchors.topMargin: Metrics.mm(1)
            anchors.bottomMargin: Metrics.mm(1)
            bench: root.bench
            upright: root.upright
        }
    }
    // What has to be minded, and what runs.
    SafetySign {
        id: sign
        x: root.margin
        visible: root.bench.hasCaution && root.bench.cautionSign !== ""
        y: root.height - height - Metrics.mm(1.5)
        sign: root.bench.cautionSign
    }
    Words {
        id: next
        objectName: "next"
        x: sign.visible ? sign.x + sign.width + Metrics.mm(4) : root.margin
        y: root.height - height - Metrics.mm(1)
        width: root.width - x - root.margin
        height: Math.max(implicitHeight, sign.visible ? sign.height : 0)
        verticalAlignment: Text.AlignVCenter
        text: {
            if (root.shelf.nextBrief !== "")
                return root.upright && root.unknown !== "" ? root.shelf.nextBrief + "\n" + root.unknown : root.shelf.nextBrief;
            return root.shelf.unknown !== "" ? root.unknown : qsTr("Nothing is drying.");
        }
        color: root.shelf.nextBrief !== "" ? Theme.calm : Theme.quiet
        font.pixelSize: Metrics.farLabel
        font.bold: root.shelf.nextBrief !== ""
        lineHeight: 0.85
    }
    MouseArea {
        property bool counts: false

        anchors.fill: parent
        onPressed: counts = !Touch.guarded()
        onReleased: {
            if (counts)
                root.doneAction.trigger(root);
        }
    }
}
