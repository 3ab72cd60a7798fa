import QtQuick
import Mountwright.ViewModels

// One figure of a step.
StackedNumber {
    id: root
    objectName: "figure"

    required property FigureViewModel figure

    whole: figure.sign + figure.whole
    numerator: figure.numerator
    denominator: figure.denominator
    unit: figure.unit
}
