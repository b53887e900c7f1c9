namespace Batch.Paper.Paint;

internal enum PathVerb { Move, Line, Curve, Close }
