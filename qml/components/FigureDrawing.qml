import QtQuick
import Mountwright.Controls
import Mountwright.Theme
import Mountwright.ViewModels

// What the number in hand is measured on, with its dimension: above it where it runs level, at its right where it
// stands. A distance too small to be seen on the whole is drawn larger, with what lies round it.
Item {
    id: root

    required property FigureViewModel figure
    // Above the drawing or at its right: the room of the dimension, and in it the dimension's own place.
    property double room: Metrics.mm(7)
    property double line: room * 0.5
    // The drawing's own width is no more than this.
    property double widest: width
    // Of the whole drawing, or of a part of it that fills the whole item.
    property bool cropped: false
    property double cap: Metrics.text * Metrics.capShare
    readonly property bool level: figure.hasMeasure && figure.level
    readonly property bool upright: figure.hasMeasure && !figure.level
    // Places of the drawing and of its dimension, in the item's coordinates.
    readonly property point from: place(figure.measureFrom)
    readonly property point to: place(figure.measureTo)
    readonly property rect edges: {
        const first = place(Qt.point(0, 0));
        const last = place(Qt.point(figure.measuredSize.width, figure.measuredSize.height));
        const left = Math.max(first.x, drawing.x);
        const top = Math.max(first.y, drawing.y);
        return Qt.rect(left, top, Math.min(last.x, drawing.x + drawing.width) - left, Math.min(last.y, drawing.y + drawing.height) - top);
    }
    readonly property double lineAt: level ? line : edges.x + edges.width + room - line
    readonly property double end: drawing.x + drawing.width + (upright ? room : 0)
    // Shorter than this, arrows and figures do not find a place.
    readonly property double least: Metrics.mm(12)

    readonly property double drawingWidth: Math.min(widest, width) - (upright ? room : 0)
    readonly property double drawingHeight: height - (level ? room : 0)
    // How large the whole is on the glass.
    readonly property double whole: Math.min(drawingWidth / Math.max(1, figure.measuredSize.width), drawingHeight / Math.max(1, figure.measuredSize.height))
    readonly property double length: Math.max(Math.abs(figure.measureTo.x - figure.measureFrom.x), Math.abs(figure.measureTo.y - figure.measureFrom.y))
    readonly property double alongWhole: cropped ? level ? drawingWidth / Math.max(1, figure.measuredSize.width) : drawingHeight / Math.max(1, figure.measuredSize.height) : whole
    readonly property bool magnified: figure.hasMeasure && length > 0 && length * alongWhole < least
    readonly property rect seen: {
        const all = figure.measuredSize;
        if (!figure.hasMeasure || drawingHeight <= 0 || !magnified && !cropped)
            return Qt.rect(0, 0, 0, 0);
        const shape = drawingWidth / drawingHeight;
        const middle = Qt.point((figure.measureFrom.x + figure.measureTo.x) / 2, (figure.measureFrom.y + figure.measureTo.y) / 2);
        // A small distance takes a third of the view; a strip is seen from its cut end.
        const along = magnified ? Math.max(length * 3, figure.hasStrip ? all.height * 1.2 * (level ? shape : 1) : 0) : (level ? all.width : all.height) * 1.02;
        const across = level ? along / shape : along * shape;
        const width = level ? along : across;
        const height = level ? across : along;
        if (figure.hasStrip && level)
            return Qt.rect(-width * 0.02, (all.height - height) / 2, width, height);
        return Qt.rect(middle.x - width / 2, middle.y - height / 2, width, height);
    }

    function place(at: point): point {
        // What is drawn and its room are read, so that a drawing laid out anew is asked again.
        const laidOut = [drawing.width, drawing.height, seen, figure.measured];
        const on = drawing.onGlass(at);
        return laidOut.length > 0 ? Qt.point(drawing.x + on.x, drawing.y + on.y) : Qt.point(0, 0);
    }

    PieceView {
        id: drawing
        objectName: "measured"
        y: root.level ? root.room : 0
        width: root.magnified || root.cropped || !root.figure.hasMeasure ? root.drawingWidth : Math.min(root.drawingWidth, root.figure.measuredSize.width * root.whole + Metrics.mm(3))
        height: root.drawingHeight
        drawing: root.figure.measured
        seen: root.seen
        clip: true
    }
    // Where on the whole that is.
    Rectangle {
        visible: root.magnified && !root.figure.hasStrip
        x: drawing.x
        y: drawing.y + drawing.height - height
        width: overview.width + Metrics.mm(1.4)
        height: overview.height + Metrics.mm(1.4)
        color: Theme.cloth

        PieceView {
            id: overview
            objectName: "whole"
            anchors.centerIn: parent
            height: Metrics.mm(15)
            width: height * root.figure.measuredSize.width / Math.max(1, root.figure.measuredSize.height)
            drawing: root.figure.measured
        }
        Rectangle {
            readonly property double toGlass: overview.width / Math.max(1, root.figure.measuredSize.width)
            readonly property double size: Metrics.mm(3.4)

            x: overview.x + (root.figure.measureFrom.x + root.figure.measureTo.x) / 2 * toGlass - size / 2
            y: overview.y + (root.figure.measureFrom.y + root.figure.measureTo.y) / 2 * toGlass - size / 2
            width: size
            height: size
            color: "transparent"
            border.color: Theme.ink
            border.width: 2 * Metrics.hairline
        }
    }
    MeasureItem {
        objectName: "measure"
        anchors.fill: parent
        visible: root.figure.hasMeasure
        level: root.figure.level
        from: root.from
        to: root.to
        edges: root.edges
        beside: root.lineAt
        fromEdge: root.figure.fromEdge
        givesLine: root.figure.givesLine
        cap: root.cap
        ink: Theme.ink
        worked: Theme.worked
        ground: Theme.cloth
        hairline: Metrics.hairline
    }
}
