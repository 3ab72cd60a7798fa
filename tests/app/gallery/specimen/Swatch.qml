import QtQuick
import Mountwright.Controls
import Mountwright.Theme

// A colour with its value, and its contrast on the three grounds as it comes out.
Column {
    id: root

    required property string name
    required property color colour
    readonly property double distance: Metrics.deskDistance

    spacing: Metrics.mm(1)

    function channel(value: double): double {
        return value <= 0.04045 ? value / 12.92 : Math.pow((value + 0.055) / 1.055, 2.4);
    }
    function light(of: color): double {
        return 0.2126 * channel(of.r) + 0.7152 * channel(of.g) + 0.0722 * channel(of.b);
    }
    function against(ground: color): string {
        const both = [light(root.colour), light(ground)].sort((a, b) => a - b);
        return ((both[1] + 0.05) / (both[0] + 0.05)).toFixed(1);
    }

    Rectangle {
        width: Metrics.mm(25)
        height: Metrics.mm(9)
        color: root.colour
        border.color: Theme.hair
        border.width: Metrics.hairline
    }
    Words {
        text: root.name + " " + root.colour.toString().toUpperCase()
        font.pixelSize: Metrics.deskLabel
        wrapMode: Text.NoWrap
    }
    Words {
        text: [Theme.ground, Theme.cloth, Theme.card].map(ground => root.against(ground)).join("  ")
        color: Theme.quiet
        font.pixelSize: Metrics.deskLabel
        wrapMode: Text.NoWrap
    }
}
