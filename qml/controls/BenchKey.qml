import QtQuick
import Mountwright.Theme

// A key of the bench's usual size; the longer its legend, the smaller its letters.
TouchKey {
    width: Metrics.corner
    height: Metrics.benchKey
    legendSize: Metrics.keyText(legend)
    margin: Metrics.keyMargin
}
