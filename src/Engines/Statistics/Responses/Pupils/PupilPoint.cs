namespace Slantwise.Engines.Statistics.Responses.Pupils;

/// <summary>Where pupils' likelihoods are asked for, and where each pupil's search began and ended.</summary>
/// <param name="Rows">The values by row of the layout.</param>
/// <param name="Sd">The spread of abilities.</param>
/// <param name="Modes">The likeliest ability of each pupil, a start before and an answer after.</param>
/// <param name="Walks">The same for how far ability has wandered, lesson by lesson.</param>
internal sealed record PupilPoint(double[] Rows, double Sd, double[] Modes, double[] Walks);
