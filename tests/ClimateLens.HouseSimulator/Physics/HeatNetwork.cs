namespace ClimateLens.HouseSimulator.Physics;

/// <summary>
/// Bodies with heat capacity, links between them and to fixed temperatures, and sources; one implicit (backward
/// Euler) step at a time. What one body loses through a link the other gains, to the last bit of the sum.
/// </summary>
public sealed class HeatNetwork
{
    private readonly double[] _capacity, _right;
    private readonly double[,] _matrix;
    private readonly List<(int Body, double Conductance, double TemperatureC)> _edges = [];
    private double _sources;

    /// <param name="capacity">Heat capacity of each body. [J/(m² K)]</param>
    public HeatNetwork(params double[] capacity)
    {
        _capacity = capacity;
        _right = new double[capacity.Length];
        _matrix = new double[capacity.Length, capacity.Length];
        TemperatureC = new double[capacity.Length];
    }

    /// <summary>Temperatures of the bodies. [°C]</summary>
    public double[] TemperatureC { get; }

    /// <summary>Heat stored above 0 °C. [J/m²]</summary>
    public double HeatJm2
    {
        get
        {
            double heat = 0;
            for (int i = 0; i < _capacity.Length; i++)
            {
                heat += _capacity[i] * TemperatureC[i];
            }

            return heat;
        }
    }

    /// <summary>Forgets links and sources of the last step.</summary>
    public void Begin()
    {
        Array.Clear(_right);
        Array.Clear(_matrix);
        _edges.Clear();
        _sources = 0;
    }

    /// <summary>Joins two bodies. [W/(m² K)]</summary>
    public void Link(int a, int b, double conductance)
    {
        _matrix[a, a] += conductance;
        _matrix[b, b] += conductance;
        _matrix[a, b] -= conductance;
        _matrix[b, a] -= conductance;
    }

    /// <summary>Joins a body to a fixed temperature. [W/(m² K), °C]</summary>
    public void Edge(int body, double conductance, double temperatureC)
    {
        _matrix[body, body] += conductance;
        _right[body] += conductance * temperatureC;
        _edges.Add((body, conductance, temperatureC));
    }

    /// <summary>Heats a body. [W/m²]</summary>
    public void Source(int body, double wattsPerM2)
    {
        _right[body] += wattsPerM2;
        _sources += wattsPerM2;
    }

    /// <summary>Moves one step on. Returns the heat that came in through edges and sources. [J/m²]</summary>
    /// <param name="seconds">Length of the step. [s]</param>
    public double Step(double seconds)
    {
        for (int i = 0; i < _capacity.Length; i++)
        {
            _matrix[i, i] += _capacity[i] / seconds;
            _right[i] += _capacity[i] / seconds * TemperatureC[i];
        }

        Eliminate();
        double heat = _sources;
        foreach ((int body, double conductance, double edgeC) in _edges)
        {
            heat += conductance * (edgeC - TemperatureC[body]);
        }

        return heat * seconds;
    }

    // The matrix is symmetric with a heavy diagonal, so no pivots are needed.
    private void Eliminate()
    {
        int count = _capacity.Length;
        for (int pivot = 0; pivot < count; pivot++)
        {
            for (int row = pivot + 1; row < count; row++)
            {
                double factor = _matrix[row, pivot] / _matrix[pivot, pivot];
                for (int column = pivot; column < count; column++)
                {
                    _matrix[row, column] -= factor * _matrix[pivot, column];
                }

                _right[row] -= factor * _right[pivot];
            }
        }

        for (int row = count - 1; row >= 0; row--)
        {
            double value = _right[row];
            for (int column = row + 1; column < count; column++)
            {
                value -= _matrix[row, column] * TemperatureC[column];
            }

            TemperatureC[row] = value / _matrix[row, row];
        }
    }
}
