import QtQuick
import Mountwright.Theme

// Signs drawn after the forms of ISO 7010: W warning triangle, M blue disc, P red ring.
Canvas {
    id: root

    required property string sign

    width: Metrics.sign
    height: Metrics.sign
    property bool lamp: Theme.lamp
    onLampChanged: requestPaint()
    onSignChanged: requestPaint()
    onWidthChanged: requestPaint()

    function line(c: var, points: var, width: double) {
        c.lineWidth = width;
        c.beginPath();
        c.moveTo(points[0], points[1]);
        for (let i = 2; i < points.length; i += 2)
            c.lineTo(points[i], points[i + 1]);
        c.stroke();
    }
    function disc(c: var, x: double, y: double, r: double, filled: bool) {
        c.beginPath();
        c.arc(x, y, r, 0, 2 * Math.PI);
        if (filled)
            c.fill();
        else
            c.stroke();
    }
    function triangle(c: var) {
        c.lineJoin = "round";
        c.fillStyle = Theme.signYellow;
        c.beginPath();
        c.moveTo(50, 9);
        c.lineTo(95, 89);
        c.lineTo(5, 89);
        c.closePath();
        c.fill();
        // On a dark ground the black edge has one of its own, or the triangle would lose its corners.
        if (Theme.lamp) {
            c.lineWidth = 12;
            c.strokeStyle = Theme.signYellow;
            c.stroke();
        }
        c.lineWidth = 8;
        c.strokeStyle = Theme.signBlack;
        c.stroke();
        c.strokeStyle = Theme.signBlack;
        c.fillStyle = Theme.signBlack;
    }
    function warn(c: var) {
        triangle(c);
        c.lineCap = "round";
        if (sign === "W022") { // a knife, point up
            line(c, [33, 80, 44, 64], 12);
            c.beginPath();
            c.moveTo(46, 55);
            c.lineTo(63, 28);
            c.lineTo(64, 50);
            c.lineTo(56, 63);
            c.closePath();
            c.fill();
        } else if (sign === "W021") { // a flame over its base line
            c.beginPath();
            c.moveTo(50, 32);
            c.bezierCurveTo(66, 50, 64, 68, 50, 72);
            c.bezierCurveTo(36, 68, 38, 54, 46, 50);
            c.bezierCurveTo(46, 44, 48, 38, 50, 32);
            c.fill();
            line(c, [34, 79, 66, 79], 4);
        } else if (sign === "W017") { // warmth rising from a surface
            for (const x of [38, 50, 62]) {
                c.lineWidth = 5;
                c.beginPath();
                c.moveTo(x, 68);
                c.bezierCurveTo(x - 9, 60, x + 9, 52, x, 42);
                c.stroke();
            }
            line(c, [30, 78, 70, 78], 5);
        } else if (sign === "W024") { // two plates and what is between them
            line(c, [32, 48, 68, 48], 6);
            line(c, [28, 78, 72, 78], 6);
            line(c, [38, 68, 62, 60], 7);
        } else { // general
            c.beginPath();
            c.moveTo(44, 34);
            c.lineTo(56, 34);
            c.lineTo(52, 64);
            c.lineTo(48, 64);
            c.closePath();
            c.fill();
            disc(c, 50, 75, 5, true);
        }
    }
    function must(c: var) {
        c.fillStyle = Theme.signBlue;
        disc(c, 50, 50, 46, true);
        c.fillStyle = Theme.signWhite;
        c.strokeStyle = Theme.signWhite;
        disc(c, 50, 36, 16, true);
        if (sign === "M016" || sign === "M017") { // a covered mouth
            c.beginPath();
            c.rect(36, 44, 28, 16);
            c.fill();
            c.strokeStyle = Theme.signBlue;
            line(c, [36, 44, 64, 44], 3);
            if (sign === "M017") { // with a filter at either side
                disc(c, 38, 54, 7, true);
                disc(c, 62, 54, 7, true);
                c.lineWidth = 3;
                disc(c, 38, 54, 7, false);
                disc(c, 62, 54, 7, false);
            }
            c.strokeStyle = Theme.signWhite;
        } else if (sign === "M004") { // covered eyes
            c.fillStyle = Theme.signBlue;
            disc(c, 44, 34, 5, true);
            disc(c, 57, 34, 5, true);
            c.fillStyle = Theme.signWhite;
        } else if (sign === "M009" || sign === "M011") { // a hand
            c.fillStyle = Theme.signBlue;
            disc(c, 50, 36, 17, true);
            c.fillStyle = Theme.signWhite;
            const wash = sign === "M011";
            for (const x of [38, 46, 54, 62])
                line(c, [x, 50, x, wash ? 34 : 24], 6);
            if (wash) { // under running water
                line(c, [34, 14, 66, 14], 6);
                for (const x of [42, 50, 58])
                    line(c, [x, 20, x, 27], 3);
            }
        }
        c.beginPath();
        c.moveTo(26, 84);
        c.bezierCurveTo(28, 58, 72, 58, 74, 84);
        c.closePath();
        c.fill();
    }
    function mustNot(c: var) {
        c.fillStyle = Theme.signWhite;
        disc(c, 50, 50, 46, true);
        c.fillStyle = Theme.signBlack;
        c.beginPath();
        c.moveTo(50, 24);
        c.bezierCurveTo(68, 44, 66, 70, 50, 74);
        c.bezierCurveTo(34, 70, 36, 54, 46, 46);
        c.bezierCurveTo(46, 40, 48, 32, 50, 24);
        c.fill();
        c.strokeStyle = Theme.signRed;
        c.lineWidth = 9;
        disc(c, 50, 50, 42, false);
        line(c, [20, 20, 80, 80], 9);
    }

    onPaint: {
        const c = getContext("2d");
        c.reset();
        c.scale(width / 100, height / 100);
        if (sign.startsWith("W"))
            warn(c);
        else if (sign.startsWith("M"))
            must(c);
        else if (sign.startsWith("P"))
            mustNot(c);
    }
}
