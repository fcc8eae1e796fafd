using Microsoft.EntityFrameworkCore.ChangeTracking;

namespace Slantwise.Storage.Model;

/// <summary>Two values are the same when their text is.</summary>
internal sealed class JsonColumnComparer<T>() : ValueComparer<T>(
    (left, right) => JsonText.Write(left) == JsonText.Write(right),
    value => JsonText.Write(value).GetHashCode(),
    value => value);
