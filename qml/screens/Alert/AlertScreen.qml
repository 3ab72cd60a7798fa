import QtQuick
import Mountwright.Components
import Mountwright.Controls
import Mountwright.Theme
import Mountwright.ViewModels

// The whole screen: now, which piece, the act, until when it can be caught, the answers of the touch test. Nothing stands
// in the lower corners: a press meant for Back or Done does nothing.
ScreenBase {
    id: root

    required property AlertViewModel alert
    // What only dries or sets stays so once it has; tack and paste close again.
    readonly property bool closes: alert.gone !== "" || alert.pastItWord !== ""
    readonly property double distance: Metrics.farDistance
    readonly property bool upright: height > width
    readonly property double margin: Metrics.mm(4)
    readonly property double wordsRight: width - margin
    // Beside the keys that put it off.
    readonly property double narrowRight: later.visible || shortly.visible ? later.x - Metrics.gap : wordsRight
    readonly property double pictureWidth: upright ? Metrics.mm(44) : Metrics.mm(48)
    readonly property double wordsLeft: alert.pictured ? margin + pictureWidth + Metrics.mm(4) : margin
    // The head: which piece, and which of its waits. On a tablet that stands upright it stands beside the drawing.
    readonly property double headLeft: upright ? wordsLeft : Math.max(wordsLeft, now.x + now.implicitWidth + Metrics.mm(4))
    readonly property double headRoom: wordsRight - headLeft
    readonly property double headBottom: Math.max(now.y + now.height, named.y + named.height, what.y + what.height)
    readonly property var head: headed()
    readonly property double wordsBottom: (bar.visible ? bar.y : heard.above) - Metrics.mm(2)

    // Those that say anything.
    function lines(first: string, second: string): var {
        const said = [];
        for (const one of [first, second]) {
            if (one !== "")
                said.push(one);
        }
        return said;
    }
    // As much of both as has room behind each other; else one below the other. The short name is that of the shelf.
    function headed(): var {
        const names = [alert.piece, alert.shortPiece];
        const nameWidth = name => fit.widthOf(name, serif) / 100 * Metrics.farName;
        const whatWidth = what => fit.widthOf(what, fit.plain) / 100 * Metrics.farLabel;
        const whats = alert.whats;
        if (!upright) {
            for (const name of names) {
                for (const what of whats) {
                    if (nameWidth(name) + Metrics.mm(4) + whatWidth(what) <= headRoom)
                        return {
                            "name": name,
                            "what": what,
                            "behind": true
                        };
                }
            }
        }
        return {
            "name": nameWidth(alert.piece) <= headRoom ? alert.piece : alert.shortPiece,
            "what": whats.length === 0 ? "" : whatWidth(whats[0]) <= headRoom ? whats[0] : whats[whats.length - 1],
            "behind": false
        };
    }

    // Only an answer, or Heard, closes the alert.
    doneAction.enabled: false
    backAction.enabled: false

    Rectangle {
        anchors.fill: parent
        color: Theme.alertGround
    }
    FontMetrics {
        id: serif
        font.family: Metrics.artworkFamily
        font.italic: true
        font.pixelSize: 100
    }
    FarWords {
        id: now
        objectName: "now"
        x: root.upright ? root.headLeft : root.margin
        y: Metrics.mm(5)
        text: root.alert.now
        color: Theme.onAlert
        font.bold: true
        wrapMode: Text.NoWrap
    }
    FarWords {
        id: named
        objectName: "artwork"
        x: root.headLeft
        y: root.upright ? now.y + now.height + Metrics.mm(1) : now.y
        width: Math.min(implicitWidth, root.headRoom)
        text: root.head.name
        color: Theme.onAlert
        font.family: Metrics.artworkFamily
        font.italic: true
        size: Metrics.farName
    }
    FarWords {
        id: what
        objectName: "what"
        x: root.head.behind ? named.x + named.implicitWidth + Metrics.mm(4) : root.headLeft
        y: root.head.behind ? named.y : named.y + named.height + Metrics.mm(1.4)
        width: root.wordsRight - x
        text: root.head.what
        color: Theme.onAlert
    }
    AlertFit {
        id: fit
        word: root.alert.act
        sentence: root.alert.test
        more: root.lines(root.alert.times, others.text)
        shortly: root.lines(root.alert.times, others.count)
        left: root.upright ? root.margin : root.wordsLeft
        top: (root.upright && root.alert.pictured ? Math.max(root.headBottom, picture.y + picture.height) : root.headBottom) + Metrics.mm(1.6)
        bottom: root.wordsBottom
        right: root.wordsRight
        narrowRight: root.narrowRight
        keysTop: shortly.visible ? shortly.y : later.visible ? later.y : root.height
    }
    // The piece in its materials on its own ground: nothing of it is seen as the alert's red.
    Rectangle {
        id: picture
        visible: root.alert.pictured
        x: root.margin
        y: root.upright ? Metrics.mm(4) : root.headBottom + Metrics.mm(3)
        width: root.pictureWidth
        height: Math.min(root.upright ? Metrics.mm(36) : Metrics.mm(57), root.wordsBottom - y)
        color: Theme.ground

        WetPiece {
            anchors.fill: parent
            anchors.margins: Metrics.mm(1.6)
            anchors.rightMargin: Metrics.mm(0.8)
            drawing: root.alert.drawing
            wet: root.alert.wet
            says: root.alert.state
        }
    }
    FarWords {
        id: word
        readonly property bool fits: fit.chosen.fits

        objectName: "word"
        x: fit.left
        y: fit.top
        width: fit.chosen.wordWidth
        text: root.alert.act
        color: Theme.onAlert
        font.bold: true
        size: fit.chosen.word
    }
    Column {
        x: fit.left
        y: fit.chosen.sentenceY
        width: root.narrowRight - x
        spacing: fit.gap

        FarWords {
            objectName: "sentence"
            width: parent.width
            visible: text !== ""
            text: root.alert.test
            color: Theme.onAlert
            size: fit.chosen.sentence
        }
        Repeater {
            model: fit.chosen.said

            FarWords {
                required property string modelData

                width: parent.width
                text: modelData
                color: Theme.onAlert
            }
        }
    }
    // Two other alerts are named where there is room, the rest counted.
    QtObject {
        id: others
        readonly property string count: names.length === 0 ? "" : qsTr("and %1 more").arg(names.length)
        readonly property var names: root.alert.others
        readonly property int rest: names.length - 2
        readonly property string text: names.length === 0 ? "" : names.length === 1 ? qsTr("Also: %1").arg(names[0]) : rest === 0 ? qsTr("Also: %1; %2").arg(names[0]).arg(names[1]) : qsTr("Also: %1; %2; and %3 more").arg(names[0]).arg(names[1]).arg(rest)
    }
    AlertBar {
        id: bar
        alert: root.alert
        x: root.margin
        y: heard.above - Metrics.mm(1.5) - height
        width: root.narrowRight - x
        height: implicitHeight
    }
    AlertKey {
        id: heard
        slot: 0
        offers: ScreenAction {
            name: "heard"
            text: qsTr("Heard")
            sign: "heard"
            by: ScreenAction.Heard
            onTriggered: root.alert.hear()
        }
    }
    AlertKey {
        id: notYet
        slot: 1
        offers: ScreenAction {
            name: "notYet"
            text: root.alert.notYetWord
            sign: root.closes ? "before" : "rising"
            enabled: root.alert.canLook && text !== ""
            onTriggered: root.alert.notYet()
        }
    }
    AlertKey {
        slot: 2
        offers: ScreenAction {
            name: "affirm"
            text: root.alert.foundWord
            sign: root.closes ? "within" : "risen"
            enabled: root.alert.canLook
            onTriggered: root.alert.ready()
        }
    }
    AlertKey {
        slot: 3
        offers: ScreenAction {
            name: "pastIt"
            text: root.alert.pastItWord
            sign: "past"
            enabled: root.alert.canLook && text !== ""
            onTriggered: root.alert.pastIt()
        }
    }
    // To put it off is no answer: these stand apart from them, at the right and above the corner.
    AlertKey {
        id: later
        slot: 5
        height: Metrics.key
        y: heard.above - Metrics.gap - height
        offers: ScreenAction {
            name: "later"
            text: qsTr("In 5 min")
            enabled: root.alert.later
            onTriggered: root.alert.tellLater()
        }
    }
    AlertKey {
        id: shortly
        slot: 5
        height: Metrics.key
        y: (later.visible ? later.y : heard.above) - Metrics.gap - height
        offers: ScreenAction {
            name: "shortly"
            text: qsTr("In 2 min")
            enabled: root.alert.shortly
            onTriggered: root.alert.tellShortly()
        }
    }
}
