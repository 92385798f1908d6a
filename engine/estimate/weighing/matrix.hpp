// Small dense matrices, and their triangular roots: a few dozen rows.
#pragma once

#include <cassert>
#include <cmath>
#include <cstddef>
#include <vector>

namespace estimate {

class Matrix {
  public:
    Matrix() = default;
    Matrix(std::size_t rows, std::size_t columns)
        : rows_(rows), columns_(columns), of_(rows * columns, 0.0) {}

    [[nodiscard]] bool operator==(const Matrix&) const = default;
    [[nodiscard]] std::size_t rows() const { return rows_; }
    [[nodiscard]] std::size_t columns() const { return columns_; }
    double& operator()(std::size_t row, std::size_t column) { return of_[row * columns_ + column]; }
    double operator()(std::size_t row, std::size_t column) const {
        return of_[row * columns_ + column];
    }
    [[nodiscard]] double* row(std::size_t row) { return of_.data() + row * columns_; }
    [[nodiscard]] const double* row(std::size_t row) const { return of_.data() + row * columns_; }

  private:
    std::size_t rows_ = 0;
    std::size_t columns_ = 0;
    std::vector<double> of_;
};

// Of two columns each, over the rows: Aᵀ B.
[[nodiscard]] inline Matrix products(const Matrix& one, const Matrix& other) {
    Matrix sums(one.columns(), other.columns());
    for (std::size_t k = 0; k < one.rows(); ++k)
        for (std::size_t i = 0; i < one.columns(); ++i) {
            const double of = one(k, i);
            const double* from = other.row(k);
            double* to = sums.row(i);
            for (std::size_t j = 0; j < other.columns(); ++j)
                to[j] += of * from[j];
        }
    return sums;
}

// The lower triangle L of L Lᵀ.
//   of   symmetric and positive definite
[[nodiscard]] inline Matrix root_of(const Matrix& of) {
    const std::size_t size = of.rows();
    assert(size == of.columns());
    Matrix root(size, size);
    for (std::size_t i = 0; i < size; ++i)
        for (std::size_t j = 0; j <= i; ++j) {
            double sum = of(i, j);
            for (std::size_t k = 0; k < j; ++k)
                sum -= root(i, k) * root(j, k);
            root(i, j) = i == j ? std::sqrt(sum) : sum / root(j, j);
        }
    return root;
}

// x of L x = b, in place.
//   step   from one element of b to the next
inline void solve_down(const Matrix& root, double* b, std::size_t step = 1) {
    for (std::size_t i = 0; i < root.rows(); ++i) {
        double sum = b[i * step];
        for (std::size_t k = 0; k < i; ++k)
            sum -= root(i, k) * b[k * step];
        b[i * step] = sum / root(i, i);
    }
}

// x of Lᵀ x = b, in place.
inline void solve_up(const Matrix& root, double* b, std::size_t step = 1) {
    for (std::size_t i = root.rows(); i-- > 0;) {
        double sum = b[i * step];
        for (std::size_t k = i + 1; k < root.rows(); ++k)
            sum -= root(k, i) * b[k * step];
        b[i * step] = sum / root(i, i);
    }
}

}  // namespace estimate
