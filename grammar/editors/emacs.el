;; Emacs 29 or newer, in ~/.emacs.d/init.el. Eglot comes with it.
(define-derived-mode bake-mode prog-mode "Bake"
  "Bread formulas."
  (setq-local comment-start "# "
              comment-start-skip "#+ *"
              indent-tabs-mode nil
              tab-width 2))
(add-to-list 'auto-mode-alist '("\\.bake\\'" . bake-mode))
(with-eval-after-load 'eglot
  (add-to-list 'eglot-server-programs '(bake-mode . ("manchet" "editor"))))
(add-hook 'bake-mode-hook #'eglot-ensure)
