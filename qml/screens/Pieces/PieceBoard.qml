pragma ComponentBehavior: Bound

import QtQuick
import Mountwright.Controls
import Mountwright.Theme
import Mountwright.ViewModels

// The pieces side by side, all to one scale. It goes on in whole rows of cards, so that none is ever cut in two.
GridView {
    id: root

    required property PiecesModel pieces
    readonly property double gap: Metrics.deskGap
    readonly property int columns: Math.min(Math.max(1, Math.floor(width / (Metrics.mm(46) + gap))), Math.max(3, count))
    readonly property int lines: Math.max(1, Math.floor(height / Metrics.mm(84)))
    readonly property int perPage: columns * lines
    readonly property int pages: Math.max(1, Math.ceil(count / perPage))
    readonly property int page: Math.round(contentY / Math.max(1, height))
    readonly property bool several: pages > 1
    readonly property int first: page * perPage + 1
    readonly property int last: Math.min(count, first + perPage - 1)
    // What stands below the ledges has this height on every card.
    readonly property double wordsHeight: Metrics.mm(54)
    readonly property double pictureHeight: cellHeight - gap - wordsHeight
    readonly property double pixels: {
        const most = pieces.largest;
        if (most.width <= 0 || most.height <= 0)
            return 0;
        return Math.min((cellWidth - gap - Metrics.mm(6)) / most.width, (pictureHeight - Metrics.mm(5.5)) / most.height);
    }

    signal taken(int row)

    function turn(pagesOn: int) {
        contentY = Math.max(0, Math.min(pages - 1, page + pagesOn)) * height;
    }

    clip: true
    model: pieces
    // The gap beside the last column and below the last row lies outside.
    cellWidth: Math.floor(width / columns)
    cellHeight: Math.floor(height / lines)
    boundsBehavior: Flickable.StopAtBounds
    interactive: false

    delegate: PieceCard {
        width: root.cellWidth - root.gap
        height: root.cellHeight - root.gap
        pixels: root.pixels
        pictureHeight: root.pictureHeight
        onTaken: root.taken(index)
    }
}
