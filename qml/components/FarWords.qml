import QtQuick
import Mountwright.Controls
import Mountwright.Theme

// Words to be read from two metres, set close: the upper edge is that of the capitals, and each line takes `pitch` of
// the letters' size.
Words {
    id: root

    property int size: Metrics.farLabel
    readonly property double pitch: 0.88
    readonly property FontMetrics metrics: FontMetrics {
        font: root.font
    }

    font.pixelSize: size
    font.letterSpacing: -0.012 * size
    lineHeightMode: Text.FixedHeight
    lineHeight: pitch * size
    topPadding: Math.round(size * Metrics.capShare - metrics.ascent)
    height: lineCount * lineHeight
}
